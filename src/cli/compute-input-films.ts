import { faultsOf } from "../core/faults-of.ts";
import { Refusal } from "../core/refusal.ts";
import { answer, type Topic } from "../core/topic.ts";
import type { FilmTopic } from "./compute-input-film-topic.ts";

/** Each is loaded only when it is asked for: reading films takes a while to load. */
const filmTopics: Readonly<Record<string, () => Promise<FilmTopic>>> = {
  compareFilms: async () => (await import("./compute-input-compare-films.ts")).compareFilmsOfFiles,
  trace: async () => (await import("./compute-input-trace.ts")).traceOfFilm,
};

/** The shell's form of a topic whose input holds pixels; undefined for every other topic. */
export const filmTopicOf = async ({ name }: Topic): Promise<FilmTopic | undefined> => filmTopics[name]?.();

/**
 * The answer of a topic to an input that names films by their files.
 * @throws Refusal `input.invalid` with each fault; `file.missing` and what reading a film refuses; the topic's own.
 */
export async function answerOfFilms(film: FilmTopic, raw: unknown): Promise<unknown> {
  const parsed = film.input.safeParse(raw);
  if (!parsed.success)
    throw new Refusal(
      "input.invalid",
      `Cannot compute ${film.topic.name}: the input has faults`,
      {},
      faultsOf(parsed.error, raw),
    );
  const output = answer(film.topic, await film.resolved(parsed.data));
  return film.output.parse(await film.told(output, parsed.data));
}
