import { expect, test } from 'vitest';
import { prettifyIssues } from '../flow/issue.ts';
import { loadPolicy } from './load-policy.ts';

const whole = `shop: Corner Parts
currency: EUR
time-zone: Europe/Lisbon
return-window: { days: 30, restocking: { percent: 15 } }
warranty:
  starter: { months: 24 }
  battery:
    months: 36
    pro-rata:
      - { from: 0, to: 12, percent: 100 }
      - { from: 12, to: 36, percent: 50 }
exchange-deposit: { starter: 4500, battery: 1200 }
`;

/** What is told of the terms with one thing changed. */
function told(from: string, to: string): string {
  const text = whole.replace(from, to);
  expect(text).not.toBe(whole);
  const result = loadPolicy({ path: 'terms.yaml', text });
  return result.type === 'issues' ? prettifyIssues(result.issues) : 'nothing';
}

test('the terms of a shop are read from YAML and from JSON alike', () => {
  const result = loadPolicy({ path: 'terms.yaml', text: whole });
  expect(result).toMatchObject({ type: 'policy', policy: { currency: 'EUR' } });
  if (result.type === 'issues') return;
  const json = JSON.stringify(result.policy);
  expect(loadPolicy({ path: 'terms.json', text: json })).toEqual(result);
  expect(Object.isFrozen(result.policy.warranty)).toBe(true);
});

test.each([
  [
    'from: 12',
    'from: 13',
    'terms.yaml:11:17 warranty.battery.pro-rata.1.from has 13; expected 12, where the step before ends: no gap',
  ],
  [
    'from: 12',
    'from: 6',
    'terms.yaml:11:17 warranty.battery.pro-rata.1.from has 6; expected 12, where the step before ends: no overlap',
  ],
  [
    'to: 36',
    'to: 30',
    'terms.yaml:11:25 warranty.battery.pro-rata.1.to has 30; expected 36, the months of the warranty',
  ],
  [
    'to: 36',
    'to: 12',
    'terms.yaml:11:25 warranty.battery.pro-rata.1.to has 12; expected more than 12',
  ],
  ['days: 30', 'days: 30.5', 'terms.yaml:4:24 return-window.days has 30.5; expected whole days'],
  ['days: 30, ', '', 'terms.yaml:4:16 return-window.days is missing; expected whole days'],
  [
    'percent: 15',
    'percent: 150',
    'terms.yaml:4:51 return-window.restocking.percent has 150; expected a percentage from 0 to 100, to two decimals',
  ],
  [
    '{ percent: 15 }',
    'some',
    'terms.yaml:4:40 return-window.restocking has "some"; expected { percent } of the price, or { amount } in minor units',
  ],
  [
    'currency: EUR',
    'currency: euro',
    'terms.yaml:2:11 currency has "euro"; expected a currency by its three capital letters, ISO 4217',
  ],
  [
    'Europe/Lisbon',
    'Europe/Atlantis',
    'terms.yaml:3:12 time-zone has "Europe/Atlantis"; expected an IANA time zone, such as Europe/Lisbon',
  ],
  [
    'starter: 4500',
    'starter: 45.5',
    'terms.yaml:12:30 exchange-deposit.starter has 45.5; expected a whole number of minor units of the currency, such as cents',
  ],
  [
    'exchange-deposit',
    'deposit',
    'terms.yaml:12:1 deposit has "deposit"; expected another name, or none: shop, address, currency, time-zone, return-window, warranty, exchange-deposit',
  ],
  ['shop: Corner Parts', '- shop', 'terms.yaml'],
])('%s changed to %s is told with its place', (from, to, issue) => {
  expect(told(from, to)).toContain(issue);
});
