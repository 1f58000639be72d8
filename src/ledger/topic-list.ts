import type { Source } from "../core/basis.ts";
import { topics } from "../core/topics.ts";

/** A computation as a list shows it. */
export interface TopicLine {
  readonly name: string;
  readonly version: number;
  readonly summary: string;
  readonly sources: readonly Source[];
  /** Its method page: docs/methods/<page>.md. */
  readonly page: string;
}

/** Every computation by name. */
export const topicList = (): TopicLine[] =>
  topics.map(({ name, version, summary, sources }) => ({
    ...{ name, version, summary, sources },
    page: name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`),
  }));
