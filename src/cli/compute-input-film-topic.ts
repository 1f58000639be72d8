import type { z } from "zod";
import type { Topic } from "../core/topic.ts";

/** A topic that the shell gives names of files where its input holds pixels. */
export interface FilmTopic<Input extends z.ZodType = z.ZodType> {
  readonly topic: Topic;
  /** What the shell takes. */
  readonly input: Input;
  /** What the shell gives. */
  readonly output: z.ZodType;
  /** The topic's own input: names become pixels. */
  readonly resolved: (asked: z.infer<Input>) => Promise<unknown>;
  /** The topic's output as the shell gives it: pixels become files where the input asks so. */
  readonly told: (output: z.infer<Topic["output"]>, asked: z.infer<Input>) => Promise<unknown>;
}
