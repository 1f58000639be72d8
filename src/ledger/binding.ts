import type { Topic } from "../core/topic.ts";
import type { InputPath } from "../record/ledger-entry.ts";
import type { Part } from "../record/parts.ts";
import type { Settings } from "../record/settings.ts";

/** One thing that a topic can be asked about in a case, with the input and where each value of it came from. */
export interface Question {
  /** What the sum is about, as `curvature of mark-k3`. */
  readonly subject: string;
  readonly input: unknown;
  readonly inputPaths: readonly InputPath[];
}

/** A thing that a topic would be asked about, if something that it needs were there. */
export interface Gap {
  readonly subject: string;
  /** What is missing and how to supply it. */
  readonly why: string;
  readonly inputPaths: readonly InputPath[];
}

/** What a binding can read: the parts, the settings, and outputs of bindings before it. */
export interface BindingContext {
  readonly parts: readonly Part[];
  readonly settings: Settings;
  /** An earlier output of this case with the id of its entry; undefined when it was refused or never asked. */
  readonly earlier: (subject: string) => { readonly entryId: string; readonly output: unknown } | undefined;
}

/** How the record becomes the input of one topic. */
export interface Binding {
  readonly topic: Topic;
  readonly ask: (context: BindingContext) => readonly (Question | Gap)[];
}
