import type { z } from "zod";
import type { Source } from "./basis.ts";
import { faultsOf } from "./faults-of.ts";
import { Refusal } from "./refusal.ts";

/** One computation that can be asked for by name: its input and output as schemas, and the pure function between. */
export interface Topic<Input extends z.ZodType = z.ZodType, Output extends z.ZodType = z.ZodType> {
  /** The name that it is asked for by, as `curvature`. */
  readonly name: string;
  /** Rises whenever an output for the same input may change. */
  readonly version: number;
  /** One line for a list. */
  readonly summary: string;
  readonly input: Input;
  readonly output: Output;
  readonly compute: (input: z.infer<Input>) => z.infer<Output>;
  readonly sources: readonly Source[];
  /**
   * Absent: the ledger asks it and computes at once. The record holds no pixels, so a topic whose input holds some is asked
   * "onTheShell" alone, or "withPictures": the ledger asks with films by their hash, and a person starts the computing.
   * "byExercise": no case asks it, but an exercise of the calibration room.
   */
  readonly asked?: "onTheShell" | "withPictures" | "byExercise";
}

/** A topic with its types checked against each other and then forgotten, so that topics can stand in one list. */
export const defineTopic = <Input extends z.ZodType, Output extends z.ZodType>(
  topic: Topic<Input, Output>,
): Topic<Input, Output> => topic;

/**
 * A topic's output for an input that nobody has checked yet.
 * @throws Refusal `input.invalid` with one fault for each thing that is wrong in the input; and the topic's own refusals.
 */
export function answer<Input extends z.ZodType, Output extends z.ZodType>(
  topic: Topic<Input, Output>,
  raw: unknown,
): z.infer<Output> {
  const parsed = topic.input.safeParse(raw);
  if (!parsed.success) {
    const faults = faultsOf(parsed.error, raw);
    throw new Refusal("input.invalid", `Cannot compute ${topic.name}: the input has faults`, {}, faults);
  }
  return topic.output.parse(topic.compute(parsed.data));
}
