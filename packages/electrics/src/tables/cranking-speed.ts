import type { FigureTable } from '../figure.ts';
import { commonPractice, fromMemory, published } from '../source.ts';

const course = published('university course on automotive electrics, starting system');

/** The speeds at which engines just start, and at which a warm start usually turns them. */
export const crankingSpeeds: FigureTable = {
  title: 'Cranking speeds',
  rows: [
    { of: 'least to start, any engine', low: 100, high: 100, unit: '/min', source: course },
    {
      of: 'least to start, petrol at -20 Cel',
      low: 60,
      high: 100,
      unit: '/min',
      source: fromMemory('an automotive handbook'),
    },
    {
      of: 'least to start, diesel with glow plugs',
      low: 80,
      high: 150,
      unit: '/min',
      source: fromMemory('an automotive handbook'),
    },
    {
      of: 'least to start, diesel without glow plugs',
      low: 100,
      high: 200,
      unit: '/min',
      source: fromMemory('an automotive handbook'),
    },
    {
      of: 'usual, petrol, warm',
      low: 180,
      high: 300,
      unit: '/min',
      source: commonPractice('a warm start of a car'),
    },
    {
      of: 'usual, diesel, warm',
      low: 150,
      high: 250,
      unit: '/min',
      source: commonPractice('a warm start of a car'),
    },
  ],
};

const ratioTexts = published(
  'Army correspondence subcourse OD1003, lesson 2; TM 5-3805-255-14, description of the starter',
);

/** How often the starter's armature turns for one turn of the engine. */
export const starterRatios: FigureTable = {
  title: 'Ratios of starter to engine',
  rows: [
    { of: 'pinion on ring gear, direct', low: 12, high: 12, unit: '1', source: ratioTexts },
    { of: 'pinion on ring gear', low: 15, high: 20, unit: '1', source: ratioTexts },
    { of: 'with double reduction', low: 25, high: 40, unit: '1', source: ratioTexts },
  ],
};
