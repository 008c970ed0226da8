import type { en } from './en.ts';

type Tree = typeof en;

/** A plural text has one entry for each category of `Intl.PluralRules`, as `key_one`. */
type WithoutPlural<Key extends string> = Key extends `${infer Base}_${'one' | 'other'}`
  ? Base
  : Key;

type KeysOf<Group extends keyof Tree> =
  `${Group}.${WithoutPlural<Extract<keyof Tree[Group], string>>}`;

/** The key of a general text: group and name, `verdict.title`. */
type TextKey = { [Group in keyof Tree]: KeysOf<Group> }[keyof Tree];

type Lookup<Group, Name extends string> = Name extends keyof Group
  ? Group[Name]
  : `${Name}_other` extends keyof Group
    ? Group[`${Name}_other`]
    : never;

/** The English text behind a key; for a plural its most general form. */
type TextOf<Key extends TextKey> = Key extends `${infer Group}.${infer Name}`
  ? Group extends keyof Tree
    ? Lookup<Tree[Group], Name>
    : never
  : never;

type Placeholders<Text> = Text extends `${string}{{${infer Name}}}${infer Rest}`
  ? Name | Placeholders<Rest>
  : never;

type Values<Names extends string> = {
  readonly [Name in Names]: Name extends 'count' ? number : string;
};

/** What a text needs beside its key: one value for each placeholder, `count` for a plural. */
type TextValues<Key extends TextKey> = [PlaceholdersOf<Key>] extends [never]
  ? []
  : [values: Values<PlaceholdersOf<Key>>];

type IsPlural<Key extends TextKey> = Key extends `${infer Group}.${infer Name}`
  ? Group extends keyof Tree
    ? `${Name}_other` extends keyof Tree[Group]
      ? true
      : false
    : false
  : false;

type PlaceholdersOf<Key extends TextKey> = Key extends TextKey
  ? Placeholders<TextOf<Key>> | (IsPlural<Key> extends true ? 'count' : never)
  : never;

/** Says a general text: a wrong key or a missing placeholder does not compile. */
export type Say = <Key extends TextKey>(key: Key, ...values: TextValues<Key>) => string;

/** The key of a text of a vehicle's case. */
export type VehicleKey = Extract<TextKey, `vehicle.${string}`>;

type VehicleNameOf<Key> = Key extends `vehicle.${infer Name}` ? Name : never;

/** Says a text of a vehicle's case: a wrong name or a missing placeholder does not compile. */
export type SayVehicle = <Name extends VehicleNameOf<VehicleKey>>(
  name: Name,
  ...values: TextValues<`vehicle.${Name}`>
) => string;

/** The key of a text in a picture. */
export type DrawingKey = Extract<TextKey, `drawing.${string}`>;

type DrawingNameOf<Key> = Key extends `drawing.${infer Name}` ? Name : never;

/** A text in a picture: "battery", "expected". */
export type DrawingName = DrawingNameOf<DrawingKey>;

/** Says a text of a picture: a wrong name or a missing placeholder does not compile. */
export type SayDrawing = <Name extends DrawingName>(
  name: Name,
  ...values: TextValues<`drawing.${Name}`>
) => string;

/**
 * The general texts of any language: the groups of the English ones. A language with more plural
 * categories adds their entries; a test holds keys and placeholders to the English ones.
 */
export type GeneralTexts = {
  readonly [Group in keyof Tree]: {
    readonly [Name in keyof Tree[Group]]: string;
  } & Readonly<Record<string, string>>;
};
