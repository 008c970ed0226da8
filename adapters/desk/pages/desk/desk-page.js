// The page follows the language of the browser until another is picked, which is then kept.
const kept = 'keyturn-desk-language';
const desk = document.querySelector('keyturn-desk');
const wanted = new URLSearchParams(location.search).get('lang');
const language = wanted ?? readLanguage() ?? navigator.language;
document.documentElement.lang = language;
desk.lang = language;

new MutationObserver(() => {
  document.documentElement.lang = desk.lang;
  try {
    localStorage.setItem(kept, desk.lang);
  } catch {
    // A browser that keeps nothing asks for the language again.
  }
}).observe(desk, { attributeFilter: ['lang'] });

function readLanguage() {
  try {
    return localStorage.getItem(kept);
  } catch {
    return null;
  }
}
