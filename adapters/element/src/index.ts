/** The element, for a build that brings its own flows and languages. */
export { defineKeyturnCase } from './define.ts';
export { KeyturnCase, type ElementSetup } from './keyturn-case.ts';
export type { FirstCard } from './first-card.ts';

/** What it loads to take a case further. */
export type { Pictures } from './view/pictures.ts';
export { CasePage, type CasePageSetup } from './case-page.ts';
export {
  createLanguages,
  type LanguageFiles,
  type LanguagePack,
  type Languages,
  type SaidPack,
} from './language-pack.ts';
export { joinTexts, partTexts, type SaidTexts } from './case/parted-texts.ts';
export { packFlow, unpackFlow, type PackedFlow } from './case/packed-flow.ts';
export type { PageWords } from './words/page-words.ts';
