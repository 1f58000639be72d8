import { z } from "zod";
import { tracePlaces } from "../core/radiograph/trace/trace-input.ts";
import { traceTopic } from "../core/radiograph/trace-topic.ts";
import { ridge, ridgeCost } from "../imaging/ridge.ts";
import { filmFile, filmOfFile } from "./compute-input-film.ts";
import type { FilmTopic } from "./compute-input-film-topic.ts";

const input = z.strictObject({
  film: filmFile,
  ...tracePlaces,
  polarity: z.enum(["dark", "bright"]).default("dark").describe("Whether the line is darker than what is beside it."),
});

/** `trace` as the shell asks it: a film's file in the place of the picture of costs, which its lines make. */
export const traceOfFilm: FilmTopic<typeof input> = {
  topic: traceTopic,
  input,
  output: traceTopic.output,
  resolved: async ({ film: name, polarity, ...places }) => {
    const film = await filmOfFile(name, "film");
    const { columns, rows } = film;
    return { cost: ridgeCost(ridge(film, { line: polarity })), columns, rows, ...places };
  },
  told: async (output) => output,
};
