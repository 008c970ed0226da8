// What a shop would do with the verdict: here it is only shown.
const outcome = document.querySelector('#outcome');
document.addEventListener('keyturn-verdict', ({ detail }) => {
  outcome.textContent = `Verdict: ${detail.fault} (${detail.strength}).`;
});
document.addEventListener('keyturn-clear', () => {
  outcome.textContent = 'No verdict yet.';
});
