import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { AnyStateNode, AnyTransitionDefinition } from 'xstate';
import type { Flow } from '../flow/flow.ts';
import { loadFlow } from '../flow/load.ts';
import { optionsOf } from '../flow/options-of.ts';
import { smallFlow } from '../flow/small-flow.ts';
import type { FileText } from '../flow/source-file.ts';
import { compileFlow } from './compile.ts';

function flowOf(files: readonly FileText[]): Flow {
  const result = loadFlow(files);
  if (result.type === 'issues') throw new Error('the flow has issues');
  return result.flow;
}

const shipped = new URL('../../../../flows/no-start/', import.meta.url);
const shippedFlow: readonly FileText[] = readdirSync(shipped)
  .filter((name) => name.endsWith('.yaml'))
  .map((path) => ({ path, text: readFileSync(new URL(path, shipped), 'utf8') }));

interface Way {
  readonly from: AnyStateNode;
  readonly to: AnyStateNode;
  readonly guard: { readonly type?: string; readonly params?: unknown };
  readonly onItsOwn: boolean;
}

function nodesUnder(node: AnyStateNode): AnyStateNode[] {
  return [node, ...Object.values(node.states).flatMap(nodesUnder)];
}

function transitionsOf(node: AnyStateNode): AnyTransitionDefinition[] {
  return [...[...node.transitions.values()].flat(), ...(node.always ?? [])];
}

function guardOf(transition: AnyTransitionDefinition): Way['guard'] {
  const { guard } = transition as { guard?: unknown };
  return typeof guard === 'string' ? { type: guard } : (guard ?? {});
}

function waysOf(nodes: readonly AnyStateNode[]): Way[] {
  return nodes.flatMap((from) =>
    transitionsOf(from).flatMap((transition) =>
      (transition.target ?? []).map((to) => ({
        from,
        to,
        guard: guardOf(transition),
        onItsOwn: (from.always ?? []).includes(transition as never),
      })),
    ),
  );
}

describe.each([
  ['the small flow', flowOf(smallFlow)],
  ['the shipped flow', flowOf(shippedFlow)],
])('%s as a machine', (_, flow) => {
  const { machine } = compileFlow(flow);
  const nodes = nodesUnder(machine.root);
  const ways = waysOf(nodes);
  const pathOf = (node: AnyStateNode): string => node.path.join('.');
  const nodeAt = (path: string): AnyStateNode | undefined =>
    nodes.find((node) => pathOf(node) === path);
  const staged = flow.stages.flatMap((stage) =>
    stage.checks.map((id) => ({ id, check: flow.checks[id]!, at: `case.${stage.id}.${id}` })),
  );

  test('has each stage as a compound state that holds its checks', () => {
    for (const stage of flow.stages) {
      expect(nodeAt(`case.${stage.id}`)?.type).toBe('compound');
    }
    expect(staged.filter(({ at }) => nodeAt(at) === undefined)).toEqual([]);
  });

  test('has one guarded way on for each band or choice, and one for no answer', () => {
    for (const { id, check, at } of staged) {
      const guards = (nodeAt(at)?.transitions.get('answered') ?? []).map(guardOf);
      expect(guards).toEqual([
        ...optionsOf(check).map((answer) => ({ type: 'isAnswer', params: { check: id, answer } })),
        { type: 'isUnanswered', params: { check: id } },
      ]);
    }
  });

  test('has no way into a question but past its cautions', () => {
    for (const { id, check, at } of staged) {
      const past = { type: 'isCautioned', params: { check: id } };
      const waits = check.waitMinutes !== undefined;
      const into = ways.filter(({ to }) => to === nodeAt(at));
      expect(into.length).toBeGreaterThan(0);
      for (const way of into) {
        // Out of its wait a question needs no second guard: the wait has been guarded.
        const isOutOfWait = pathOf(way.from) === `${at}--wait`;
        expect(way.guard).toEqual(isOutOfWait ? { type: 'isDue', params: { check: id } } : past);
        expect(isOutOfWait).toBe(waits);
      }
      for (const way of ways.filter(({ to }) => to === nodeAt(`${at}--wait`))) {
        expect(way.guard).toEqual(past);
      }
    }
  });

  test('enters no check by an initial state, nor by its history', () => {
    const starts = nodes.flatMap((node) => node.initial.target);
    const questions = new Set(staged.map(({ at }) => nodeAt(at)));
    expect(starts.filter((node) => questions.has(node))).toEqual([]);
    expect(nodes.filter(({ type }) => type === 'history').map(({ history }) => history)).toEqual([
      'shallow',
    ]);
  });

  test('lets a case wait for a confirmation before every check', () => {
    for (const { id, at } of staged) {
      const caution = nodeAt(`${at}--caution`);
      expect([...(caution?.transitions.keys() ?? [])]).toContain('confirmed');
      expect((caution?.always ?? []).map(guardOf)).toEqual([
        { type: 'isCautioned', params: { check: id } },
      ]);
    }
  });

  test('reaches every state', () => {
    const reached = new Set<AnyStateNode>();
    const reach = (node: AnyStateNode): void => {
      if (reached.has(node)) return;
      reached.add(node);
      if (node.parent) reach(node.parent);
      node.initial.target.forEach(reach);
      waysOf([node]).forEach(({ to }) => reach(to));
    };
    reach(machine.root);
    expect(nodes.filter((node) => !reached.has(node)).map(pathOf)).toEqual([]);
  });

  test('leaves every state by some way', () => {
    const leaves = (node: AnyStateNode): boolean =>
      transitionsOf(node).some(({ target }) => (target ?? []).some((to) => to !== node)) ||
      (node.parent !== undefined && leaves(node.parent));
    const resting = nodes.filter((node) => node.type === 'atomic');
    expect(resting.filter((node) => !leaves(node)).map(pathOf)).toEqual([]);
  });

  test('comes back from every interrupt, by its history or to the proof, or as if it had never been', () => {
    const [returning] = nodes.filter(({ type }) => type === 'history');
    const dangers = Object.keys(flow.interrupts).map((id) => nodeAt(`interrupted.${id}`));
    for (const { id, then } of Object.values(flow.interrupts)) {
      const back = waysOf([nodeAt(`interrupted.${id}`)!]);
      expect(back.map(({ to }) => to)).toEqual(
        then === 'prove'
          ? [nodeAt('case.verdict'), ...dangers, returning]
          : [returning, ...dangers, returning],
      );
    }
  });

  test('is raised out of every check by every interrupt', () => {
    for (const id of Object.keys(flow.interrupts)) {
      const raised = ways.filter(
        ({ from, guard }) =>
          pathOf(from) === 'case' &&
          guard.type === 'isInterrupt' &&
          (guard.params as { interrupt: string }).interrupt === id,
      );
      expect(raised.map(({ to }) => pathOf(to))).toEqual([`interrupted.${id}`]);
    }
  });

  test('names no guard and no action that it has not', () => {
    const { guards, actions } = machine.implementations;
    const named = nodes.flatMap((node) => [...node.entry, ...node.exit]);
    const done = [...named, ...nodes.flatMap(transitionsOf).flatMap((one) => one.actions)];
    const typeOf = (one: unknown): string =>
      typeof one === 'string' ? one : (one as { type: string }).type;
    expect(done.map(typeOf).filter((name) => !(name in actions))).toEqual([]);
    const asked = ways.flatMap(({ guard }) => guard.type ?? []);
    expect(asked.filter((name) => !(name in guards))).toEqual([]);
  });

  test('compiles to the same machine every time', () => {
    expect(JSON.stringify(compileFlow(flow).machine.definition)).toBe(
      JSON.stringify(machine.definition),
    );
  });
});
