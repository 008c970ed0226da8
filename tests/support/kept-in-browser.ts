/**
 * What a page has kept in its browser.
 */
import type { Page } from 'playwright-core';

/** All that lies in the page's database of this name, by shelf. */
export function keptIn(
  page: Page,
  name: string,
): Promise<Readonly<Record<string, readonly unknown[]>>> {
  return page.evaluate(
    (database) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open(database);
        opening.onerror = () => {
          reject(new Error(`${database} cannot be opened`));
        };
        opening.onsuccess = () => {
          const shelves = [...opening.result.objectStoreNames];
          const read = opening.result.transaction(shelves);
          const found = Object.fromEntries(
            shelves.map((shelf) => [shelf, read.objectStore(shelf).getAll()]),
          );
          read.oncomplete = () => {
            opening.result.close();
            resolve(
              Object.fromEntries(shelves.map((shelf) => [shelf, found[shelf]?.result ?? []])),
            );
          };
        };
      }),
    name,
  );
}
