// The page follows the language of the phone until another is picked, which is then kept.
const kept = 'keyturn-language';
const element = document.querySelector('keyturn-case');
const wanted = new URLSearchParams(location.search).get('lang');
const language = wanted ?? readLanguage() ?? navigator.language;
document.documentElement.lang = language;
element.lang = language;
// Whoever comes back goes on where the case is, not where its strip begins.
element.addEventListener('keyturn-ready', () => element.events.length > 1 && element.showStep());

new MutationObserver(() => {
  document.documentElement.lang = element.lang;
  try {
    localStorage.setItem(kept, element.lang);
  } catch {
    // A browser that keeps nothing asks for the language again.
  }
}).observe(element, { attributeFilter: ['lang'] });

function readLanguage() {
  try {
    return localStorage.getItem(kept);
  } catch {
    return null;
  }
}

if ('serviceWorker' in navigator) {
  await navigator.serviceWorker.register('sw.js');
}
