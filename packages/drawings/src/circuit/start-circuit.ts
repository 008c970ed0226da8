/**
 * The start circuit of a road vehicle as the trade knows it, much simplified: common practice, no
 * source. Power comes up on the left, the starter hangs on the right, the engine closes the circle.
 */
import type { Circuit, CircuitVehicle } from './circuit.ts';

const is24 = ({ nominal }: CircuitVehicle): boolean => nominal === 24;

/** The one circuit that there is. */
export const startCircuit: Circuit = {
  height: 49,
  parts: [
    {
      id: 'ignition-switch',
      kind: 'switch',
      at: [9, 7],
      size: [4, 3],
      name: {
        says: ({ ignition }) => (ignition === 'button' ? 'startButton' : 'ignitionSwitch'),
        at: [8.6, 4.8],
        width: 9,
        upwards: true,
      },
    },
    {
      id: 'selector-switch',
      kind: 'switch',
      at: [19, 7],
      size: [4, 3],
      name: {
        says: ({ transmission }) => (transmission === 'manual' ? 'clutchSwitch' : 'selectorSwitch'),
        at: [18.6, 4.8],
        width: 9,
        upwards: true,
      },
    },
    {
      id: 'relay',
      kind: 'relay',
      at: [32.5, 12.5],
      size: [9, 8],
      name: { says: 'relay', at: [29.2, 18.4], width: 9 },
    },
    {
      id: 'starter-fuse',
      kind: 'fuse',
      at: [13, 13.5],
      size: [4, 1.6],
      name: { says: 'starterFuse', at: [13, 11.8], width: 12, upwards: true },
    },
    {
      id: 'main-fuse',
      kind: 'fuse',
      at: [3, 23.2],
      size: [1.6, 3.6],
      name: { says: 'mainFuse', at: [4.6, 22.4], width: 11, anchor: 'start' },
    },
    {
      id: 'isolator',
      kind: 'switch',
      at: [3, 27.4],
      size: [3, 3.4],
      name: { says: 'isolator', at: [4.6, 26.6], width: 10, anchor: 'start' },
      on: is24,
    },
    {
      id: 'battery',
      kind: 'battery',
      at: [10, 38.8],
      size: [13, 9.6],
      name: { says: 'battery', at: [10, 36.9], width: 12, inside: true },
      on: (vehicle) => !is24(vehicle),
    },
    {
      id: 'battery-pair',
      kind: 'battery-pair',
      at: [10, 38.8],
      size: [13, 9.6],
      name: { says: 'battery', at: [10, 36.9], width: 12, inside: true },
      on: is24,
    },
    { id: 'positive-clamp', kind: 'clamp', at: [7, 33.2], size: [3, 1.2] },
    { id: 'negative-clamp', kind: 'clamp', at: [13, 33.2], size: [3, 1.2] },
    {
      id: 'starter',
      kind: 'housing',
      at: [29.75, 35.5],
      size: [16.5, 14],
      name: { says: 'starter', at: [29.75, 41.9], width: 15.5, inside: true },
    },
    {
      id: 'solenoid',
      kind: 'solenoid',
      at: [29.75, 30.5],
      size: [14.5, 5],
      name: { says: 'solenoid', at: [29.75, 29.7], width: 12, inside: true },
    },
    { id: 'motor', kind: 'motor', at: [27.5, 37], size: [6, 6] },
    {
      id: 'engine',
      kind: 'block',
      at: [29.75, 45.6],
      size: [16.5, 3.6],
      name: { says: 'engine', at: [29.75, 46.1], width: 15, inside: true },
    },
  ],
  wires: [
    {
      id: 'positive-cable',
      thick: true,
      through: [
        [7, 33.2],
        [3, 33.2],
        [3, 20.5],
        [24.5, 20.5],
        [24.5, 28],
      ],
      name: { says: 'positiveCable', at: [12, 18.9], width: 14 },
    },
    {
      id: 'ground-cable',
      thick: true,
      through: [
        [13, 33.2],
        [18.5, 33.2],
        [18.5, 45.6],
        [21.5, 45.6],
      ],
      name: { says: 'groundCable', at: [17.3, 46.2], width: 14, anchor: 'end' },
    },
    {
      id: 'feed',
      through: [
        [3, 20.5],
        [3, 7],
        [7, 7],
      ],
    },
    {
      id: 'switched',
      through: [
        [11, 7],
        [17, 7],
      ],
    },
    {
      id: 'command',
      through: [
        [21, 7],
        [30.5, 7],
        [30.5, 9.5],
      ],
    },
    {
      id: 'relay-feed',
      through: [
        [3, 13.5],
        [11, 13.5],
      ],
    },
    {
      id: 'relay-supply',
      through: [
        [15, 13.5],
        [29, 13.5],
      ],
    },
    {
      id: 'relay-ground',
      through: [
        [34.5, 9.5],
        [34.5, 7],
        [37, 7],
      ],
    },
    {
      id: 'control',
      through: [
        [35, 15.5],
        [35, 28],
      ],
    },
    {
      id: 'motor-feed',
      thick: true,
      through: [
        [24.5, 33],
        [24.5, 37],
      ],
    },
  ],
  joints: [
    [3, 20.5],
    [3, 13.5],
  ],
  places: {
    'battery-positive-post': { at: [7, 32.2], tag: [8.2, 29.4] },
    'battery-positive-clamp': { at: [6.2, 33.6], tag: [3.5, 36.5] },
    'battery-negative-post': { at: [13, 32.2], tag: [14.8, 29.4] },
    'battery-negative-clamp': { at: [13.8, 33.6], tag: [16.5, 36.5] },
    'starter-main-stud': { at: [24.5, 28], tag: [20.4, 25.6] },
    'starter-motor-stud': { at: [24.5, 33], tag: [20.6, 35.4] },
    'starter-body': { at: [38, 38.4], tag: [34.4, 36.2] },
    'engine-metal': { at: [36, 43.8], tag: [33, 42] },
    'solenoid-control-terminal': { at: [35, 28], tag: [32.6, 25.4] },
    'relay-socket-supply': { at: [28.2, 13.5], tag: [24.6, 15.8] },
    'relay-socket-coil': { at: [30.5, 9.2], tag: [27, 4.4] },
    'relay-socket-ground': { at: [34.5, 9.2], tag: [34.6, 4.4] },
    'battery-a': { at: [5.1, 39.6], tag: [5.1, 39.6], says: 'first' },
    'battery-b': { at: [14.9, 39.6], tag: [14.9, 39.6], says: 'second' },
  },
  spots: [
    { between: ['battery-positive-post', 'battery-negative-post'], at: [10, 38.5], most: 2 },
    { between: ['battery-a', 'battery-b'], at: [10, 42.5], most: 1 },
    { between: ['battery-positive-post', 'battery-positive-clamp'], at: [4, 31.4], most: 1 },
    { between: ['battery-positive-post', 'starter-main-stud'], at: [19.6, 20.5], most: 1 },
    { between: ['starter-body', 'battery-negative-post'], at: [18.5, 41.4], most: 1 },
    { between: ['starter-main-stud', 'starter-motor-stud'], at: [29.75, 31.6], most: 1 },
    { between: ['solenoid-control-terminal', 'starter-body'], at: [35, 21.6], most: 1 },
    { between: ['relay-socket-supply', 'battery-negative-post'], at: [22, 13.5], most: 1 },
    { between: ['relay-socket-coil', 'relay-socket-ground'], at: [25.4, 7], most: 1 },
    { between: 'clamp', at: [18.5, 37.6], most: 1 },
  ],
  suspects: {
    'battery-discharged': { of: ['battery', 'battery-pair'], sign: [2.4, 34.6] },
    'battery-worn': { of: ['battery', 'battery-pair'], sign: [2.4, 34.6] },
    'battery-connection': { of: ['positive-clamp', 'negative-clamp'], sign: [10, 33.2] },
    'positive-cable': { of: ['positive-cable'], sign: [6, 20.5] },
    'ground-cable': { of: ['ground-cable'], sign: [18.5, 33.2] },
    'main-fuse': { of: ['main-fuse'], sign: [1.3, 21.6] },
    'starter-fuse': { of: ['starter-fuse'], sign: [16.2, 15.1] },
    'starter-relay': { of: ['relay'], sign: [37, 16.4] },
    'ignition-switch': { of: ['ignition-switch'], sign: [5.6, 8.8] },
    'selector-switch': { of: ['selector-switch'], sign: [22, 8.6] },
    'clutch-switch': { of: ['selector-switch'], sign: [22, 8.6] },
    'control-wiring': {
      of: ['command', 'relay-supply', 'relay-ground', 'control'],
      sign: [35, 18.4],
    },
    solenoid: { of: ['solenoid'], sign: [37, 33] },
    'starter-motor': { of: ['motor'], sign: [31, 35] },
    'starter-drive': { of: ['starter'], sign: [22, 42.2] },
    'ring-gear': { of: ['engine'], sign: [22, 47.2] },
    'engine-locked': { of: ['engine'], sign: [22, 47.2] },
    'engine-drag': { of: ['engine'], sign: [22, 47.2] },
  },
};
