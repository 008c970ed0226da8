// A flow made ready, and a case taken through it.
export { compileFlow } from './chart/compile.ts';
export type { Chart } from './chart/compile.ts';
export { ContextError, openCase, repeat, turn } from './case/turn.ts';
export type { Opening, Step } from './case/turn.ts';
export { CaseError, foldCase } from './case/case.ts';
export type { Case } from './case/case.ts';

// What comes in.
export { expected } from './case/expected.ts';
export type { Expected } from './case/expected.ts';
export { sentIf } from './case/sent-if.ts';
export { proofBeforeSale, proofGrounds, vehicleProof } from './case/vehicle-proof.ts';
export type { ProofGrounds, VehicleProof } from './case/vehicle-proof.ts';
export { caseByHand, flowByHand } from './case/vehicle-by-hand.ts';
export type { FlowByHand, ToldByHand } from './case/vehicle-by-hand.ts';
export { saleCheck, soldNotBefore } from './case/sale-day.ts';
export { judgeFigure } from './case/judge-figure.ts';
export type { FigureJudgement } from './case/judge-figure.ts';
export { inputSchema } from './case/input.ts';
export type { AnswerInput, Input, Talk } from './case/input.ts';
export { contextFields, readContext } from './case/context.ts';
export type {
  Context,
  ContextFault,
  ContextField,
  ContextResult,
  ContextValue,
  PartLimit,
  PartLimits,
} from './case/context.ts';

// What has happened, and where a case stands.
export type { CaseEvent, LaterEvent, OpenedEvent } from './case/event.ts';
export { lastingCautions } from './case/cautions.ts';
export { isReading, isSaid } from './case/state.ts';
export type { Answer, CaseState, Next, Said } from './case/state.ts';
export { doneMessage, proofOfRepair } from './case/repair-proof.ts';
export { kitMissing } from './case/kit-missing.ts';
export { stripOf } from './case/strip.ts';
export type { Strip, StripLine } from './case/strip.ts';
export { positionOf } from './case/position.ts';
export type { Position as CasePosition } from './case/position.ts';

// What is said.
export type {
  AskMessage,
  CautionMessage,
  ConfirmMessage,
  DecisionMessage,
  DoneMessage,
  FindingWeightMessage,
  InterruptMessage,
  Message,
  NotedMessage,
  NumbersMessage,
  OtherDecision,
  RankingMessage,
  ReadingMessage,
  RefusalCode,
  RefusedMessage,
  ScaleBound,
  ScaleSpan,
  SetAsideMessage,
  Settling,
  Strength,
  TellMessage,
  VerdictMessage,
  WaitMessage,
  Weighted,
  WeightsMessage,
  WhyMessage,
  Worth,
} from './case/message.ts';
export { testFigures } from './case/test-figures.ts';
export type { TestFigures } from './case/test-figures.ts';

// What a flow is.
export { optionsOf } from './flow/options-of.ts';
export type {
  AnswerForm,
  Band,
  BandEnd,
  Caution,
  Check,
  CommonCause,
  Computed,
  DateBand,
  DecisionLine,
  Cover,
  Fault,
  Flow,
  Interrupt,
  LikelihoodTable,
  PartSigns,
  Position,
  Prior,
  Remedy,
  RootCause,
  SignalWord,
  Stage,
  Stop,
} from './flow/flow.ts';
export type { Condition, Range } from './flow/condition.ts';

// The terms of a shop, what they give back, and the days by which they go.
export { policyFaults, policyShape, soldParts } from './policy/policy.ts';
export type { Fee, Policy, PolicyFault, ProRataStep, SoldPart, Warranty } from './policy/policy.ts';
export { decimalsOf, minorUnits, typedAmount } from './policy/money.ts';
export { refundOf } from './policy/refund.ts';
export type { Payment, Refund, RefundLine, Sale } from './policy/refund.ts';
export { daysLater, isDay, looksLikeDay, monthsLater } from './policy/calendar.ts';

// What confirmed outcomes teach.
export { answersFound } from './case/answers-found.ts';
export { learnedFlow } from './flow/learned-flow.ts';
export type { LearnedFlow, LearningWeights } from './flow/learned-flow.ts';
