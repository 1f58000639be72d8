import { capital } from "./capital.ts";

/** A name of the code as words: `canalOnFilmMm` as `Canal on film mm`. */
export function wordsOfName(name: string): string {
  const spaced = name.replace(/([a-z\d])([A-Z])/g, (_, end: string, start: string) => `${end} ${start.toLowerCase()}`);
  return capital(spaced);
}
