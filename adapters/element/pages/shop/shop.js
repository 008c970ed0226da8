// What a shop would do with the verdict: here it is only shown, as the page was told it.
const words = {
  en: {
    note: 'An invented shop, to show the element in somebody else’s page.',
    title: 'Before you buy a starter',
    why: 'Most starters that come back are not at fault. Measure first: it costs a few minutes.',
    none: 'The shop’s page has been told no verdict yet.',
    told: 'The shop’s page has been told:',
  },
  de: {
    note: 'Ein erfundener Laden, um das Element in einer fremden Seite zu zeigen.',
    title: 'Bevor Sie einen Anlasser kaufen',
    why: 'Die meisten Anlasser, die zurückkommen, sind nicht defekt. Erst messen: Es kostet wenige Minuten.',
    none: 'Der Seite des Ladens wurde noch kein Befund gemeldet.',
    told: 'Der Seite des Ladens wurde gemeldet:',
  },
  es: {
    note: 'Una tienda inventada, para mostrar el elemento en una página ajena.',
    title: 'Antes de comprar un motor de arranque',
    why: 'La mayoría de los motores de arranque devueltos no están averiados. Mida primero: son pocos minutos.',
    none: 'La página de la tienda no ha recibido aún ningún veredicto.',
    told: 'La página de la tienda ha recibido:',
  },
  fr: {
    note: 'Une boutique inventée, pour montrer l’élément dans la page de quelqu’un d’autre.',
    title: 'Avant d’acheter un démarreur',
    why: 'La plupart des démarreurs rendus ne sont pas en cause. Mesurez d’abord : quelques minutes suffisent.',
    none: 'La page de la boutique n’a encore reçu aucun verdict.',
    told: 'La page de la boutique a reçu :',
  },
  pl: {
    note: 'Zmyślony sklep, aby pokazać element na cudzej stronie.',
    title: 'Zanim kupisz rozrusznik',
    why: 'Większość zwracanych rozruszników jest sprawna. Najpierw zmierz: to kilka minut.',
    none: 'Strona sklepu nie otrzymała jeszcze orzeczenia.',
    told: 'Strona sklepu otrzymała:',
  },
  ar: {
    note: 'متجر مخترَع، لعرض العنصر في صفحة غيره.',
    title: 'قبل أن تشتري بادئ حركة',
    why: 'معظم بوادئ الحركة المرتجعة سليمة. قِس أولًا: لا يستغرق ذلك إلا دقائق.',
    none: 'لم تُبلَّغ صفحة المتجر بأي نتيجة بعد.',
    told: 'بُلّغت صفحة المتجر بما يلي:',
  },
};
const element = document.querySelector('keyturn-case');
const outcome = document.querySelector('#outcome');
let verdict;

function speak(tag) {
  const [language] = tag.toLowerCase().split(/[-_]/);
  const said = words[language] ?? words.en;
  document.documentElement.lang = said === words.en ? 'en' : language;
  document.documentElement.dir = language === 'ar' ? 'rtl' : 'ltr';
  for (const part of document.querySelectorAll('[data-says]')) {
    part.textContent = said[part.dataset.says];
  }
  outcome.textContent =
    verdict === undefined ? said.none : `${said.told} ${verdict.fault}, ${verdict.strength}.`;
}

document.addEventListener('keyturn-verdict', ({ detail }) => {
  verdict = detail;
  speak(element.lang);
});
document.addEventListener('keyturn-clear', () => {
  verdict = undefined;
  speak(element.lang);
});
// The page follows the language of the browser, and then the one that is picked in the element.
new MutationObserver(() => speak(element.lang)).observe(element, { attributeFilter: ['lang'] });
element.lang = new URLSearchParams(location.search).get('lang') ?? navigator.language;
