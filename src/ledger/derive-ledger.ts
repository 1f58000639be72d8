import { caseId, type LedgerEntryId, ledgerEntryId } from "../core/ids.ts";
import { Refusal } from "../core/refusal.ts";
import { answer, type Topic } from "../core/topic.ts";
import { hashOf } from "../record/canonical-json.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { Part } from "../record/parts.ts";
import type { Settings } from "../record/settings.ts";
import type { Binding, BindingContext, Gap, Question } from "./binding.ts";
import { bindings } from "./bindings.ts";
import { withClickOrigin } from "./with-click-origin.ts";

/** A case as the ledger reads it, and what the ledger needs besides. */
export interface LedgerSource {
  readonly caseId: string;
  readonly parts: readonly Part[];
  readonly settings: Settings;
  /** The moment that new entries carry. */
  readonly at: string;
  /** An entry that is stored already; what is known is not computed again. */
  readonly known: (id: string) => LedgerEntry | undefined;
  /** An entry that stands for a sum, whatever the version of its topic; asked where its own id is not known. */
  readonly instead?: (sum: Pick<LedgerEntry, "subject" | "topic" | "input">) => LedgerEntry | undefined;
  /** Told of each sum that waits for its pictures, because no entry of it is known. */
  readonly waits?: (sum: WaitingSum) => void;
}

/** A sum that the record asks for and can't give, because it needs the pixels of films. */
export interface WaitingSum extends Question {
  /** Of the entry that it will be. */
  readonly id: LedgerEntryId;
  readonly topic: Topic;
}

/** What stands in the place of a sum that waits. */
const notCompared = "not compared yet: press Compare";

/**
 * The entries that hold for a case now, one for each subject of each binding, in the order of the bindings.
 * The same input to the same version of a topic is the same entry: its id is the hash of both.
 */
export function deriveLedger(source: LedgerSource, among: readonly Binding[] = bindings): LedgerEntry[] {
  const steps = derivation(source, among);
  let step = steps.next();
  while (step.done !== true) step = steps.next(outcomesOf(step.value));
  return step.value;
}

/** Does sums, wherever that is. */
export type DoSums = (sums: SumsToDo) => Promise<readonly Outcome[]>;

/** The same entries, their sums done elsewhere: those of one binding that are not known are handed over at once. */
export async function deriveLedgerBy(
  doSums: DoSums,
  source: LedgerSource,
  among: readonly Binding[] = bindings,
): Promise<LedgerEntry[]> {
  const steps = derivation(source, among);
  let step = steps.next();
  while (step.done !== true) step = steps.next(await doSums(step.value));
  return step.value;
}

/** Walks the bindings, asks for what is not known of each, and goes on with what it is told. */
function* derivation(
  source: LedgerSource,
  among: readonly Binding[],
): Generator<SumsToDo, LedgerEntry[], readonly Outcome[]> {
  const bySubject = new Map<string, LedgerEntry>();
  const earlier = (subject: string) => {
    const entry = bySubject.get(subject);
    return entry?.output === undefined ? undefined : { entryId: entry.id, output: entry.output };
  };
  const context: BindingContext = { parts: source.parts, settings: source.settings, earlier };
  for (const { topic, ask } of among) {
    const asked = ask(context);
    const found = asked.map((one) => entryOrSum(topic, withClickOrigin(one, source.settings), source));
    const toDo = found.filter((one) => "todo" in one);
    const told = toDo.length === 0 ? [] : yield { topic, inputs: toDo.map(({ todo }) => todo.input) };
    const outcomes = told.values();
    for (const one of found) {
      const entry = "todo" in one ? completed(one.todo, outcomes.next().value) : one;
      bySubject.set(entry.subject, entry);
    }
  }
  return [...bySubject.values()];
}

type EntryToDo = Omit<LedgerEntry, "output" | "refused">;

/** A fault of the program where a sum that was handed over got no answer. */
function completed(todo: EntryToDo, outcome: Outcome | undefined): LedgerEntry {
  if (outcome === undefined) throw new Error(`no answer about ${todo.subject}`);
  const { at, ...entry } = todo;
  return { ...entry, ...outcome, at };
}

/** An entry that is known or says what is missing, else the entry that a sum will complete. */
function entryOrSum(topic: Topic, asked: Question | Gap, source: LedgerSource): LedgerEntry | { todo: EntryToDo } {
  const input = "input" in asked ? asked.input : { missing: asked.why };
  const { subject, inputPaths } = asked;
  const about = { subject, topic: topic.name, topicVersion: topic.version };
  const id = ledgerEntryId(hashOf({ caseId: source.caseId, ...about, input }));
  const known = source.known(id) ?? source.instead?.({ subject, topic: topic.name, input });
  if (known !== undefined) return known;
  const todo = { id, caseId: caseId(source.caseId), ...about, input, inputPaths, at: source.at };
  if (!("input" in asked)) return completed(todo, { refused: [asked.why] });
  if (topic.asked !== "withPictures") return { todo };
  source.waits?.({ id, subject, inputPaths, input, topic });
  return entryOrSum(topic, { subject, inputPaths, why: notCompared }, source);
}

/** Sums of one topic that are not known yet. */
export interface SumsToDo {
  readonly topic: Topic;
  readonly inputs: readonly unknown[];
}

/** What each of some sums came to, in their order. */
export const outcomesOf = ({ topic, inputs }: SumsToDo): Outcome[] => inputs.map((input) => outcomeOf(topic, input));

/** What a sum came to: what the topic answers, or the lines in which it refuses. */
export type Outcome = { readonly output: unknown } | { readonly refused: string[] };

/** What a topic answers, or the lines in which it refuses; a fault of the program is thrown on. */
export function outcomeOf(topic: Topic, input: unknown): Outcome {
  try {
    return { output: answer(topic, input) };
  } catch (thrown) {
    if (!(thrown instanceof Refusal)) throw thrown;
    const lines = thrown.faults.map((fault) => `${fault.path}: ${fault.says}`);
    return { refused: lines.length > 0 ? lines : [thrown.message] };
  }
}
