import { servePages } from '../tools/pages.mjs';
import { prepare } from '../tools/prepare.mjs';
import { startBrowser } from './support/browser.ts';
import { openCounter, inside, press, plain, typeSlowly } from './support/counter-page.ts';
await prepare();
const browser = await startBrowser(); const site = await servePages();
for (const [lang, width, scheme] of [['en',1540,'light'],['en',390,'dark'],['de',1540,'dark'],['ar',1540,'light'],['ar',390,'light']] as const) {
const { page, faults, context } = await openCounter(browser, `${site.url}desk/counter.html?lang=${lang}`, { viewport: { width, height: width < 500 ? 844 : 900 }, colorScheme: scheme });
const shot = (n: string) => page.screenshot({ path: `/tmp/kt/ctr17a-${lang}-${width}-${scheme}-${n}.png`, fullPage: true });
await press(page, '1');
const line = inside(page, 'input[name=line]');
const lines: Record<string,string[]> = { en: ['turns slowly','vehicle says something else bad'], de: ['dreht langsam','Fahrzeug sagt: etwas anderes schlecht'], ar: ['يدور ببطء','شيء آخر سيئ'] };
for (const l of lines[lang]!) { await line.fill(l); await page.keyboard.press('Enter'); await page.waitForTimeout(1200); }
await inside(page, '.found .fix').last().click(); await page.waitForTimeout(600); await shot('b');
await page.keyboard.press('4'); await page.waitForTimeout(800);
for (const k of ['12.75','Enter','10.9','Enter','2.3','Enter']) { if (k.length>1 && k!=='Enter') await typeSlowly(page,k); else await page.keyboard.press(k,{delay:60}); await page.waitForTimeout(500); }
await page.waitForTimeout(800); await shot('c');
await page.keyboard.press('Enter'); await page.waitForTimeout(1500); await shot('e'); console.log(lang,await plain(inside(page,'.card')).then(t=>t.slice(0,1200)));
await page.keyboard.press('1'); await page.waitForTimeout(1500); await shot('f');
console.log(faults); await context.close(); }
await browser.close(); site.close();
