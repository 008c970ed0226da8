/**
 * The parts counter played by keys alone: what a return takes of a clerk, by the keystroke-level
 * model. What is done to the part itself, on the bench or the charger, is not the page's time.
 */
import { servePages } from '../../tools/pages.mjs';
import { startBrowser, whyNoBrowser } from '../support/browser.ts';
import { judgePart, secondsFor, type Effort } from '../support/counter-clerk.ts';
import { counterWithShop, partsInHand } from '../support/counter-parts.ts';
import { print, row } from './print-figures.ts';

const titles = ['keys', 'decisions', 'words', 's, practised', 's, first time'];

function cells(effort: Effort): readonly string[] {
  const { used, anew } = secondsFor(effort);
  const words = effort.aloud + effort.heard + effort.readAnew;
  return [effort.keys, effort.decided, words, used.toFixed(0), anew.toFixed(0)].map(String);
}

if (whyNoBrowser !== undefined) print(`not measured here: ${whyNoBrowser}`);
else {
  const [browser, site] = await Promise.all([startBrowser(), servePages()]);
  print(row('a return at the counter', titles));
  for (const [name, part] of Object.entries(partsInHand())) {
    const { page, context } = await counterWithShop(browser, site.url);
    const effort = await judgePart(page, part);
    print(row(`  ${name}`, cells(effort)));
    print(`    ${effort.decision}; asked: ${effort.asked.join(', ')}`);
    await context.close();
  }
  await browser.close();
  site.close();
}
