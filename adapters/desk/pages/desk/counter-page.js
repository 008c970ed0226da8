// The page follows the language of the browser until another is picked, which is then kept.
const kept = 'keyturn-counter-language';
const counter = document.querySelector('keyturn-counter');
const wanted = new URLSearchParams(location.search).get('lang');
const language = wanted ?? readLanguage() ?? navigator.language;
document.documentElement.lang = language;
counter.lang = language;

new MutationObserver(() => {
  document.documentElement.lang = counter.lang;
  try {
    localStorage.setItem(kept, counter.lang);
  } catch {
    // A browser that keeps nothing asks for the language again.
  }
}).observe(counter, { attributeFilter: ['lang'] });

function readLanguage() {
  try {
    return localStorage.getItem(kept);
  } catch {
    return null;
  }
}
