import { Refusal } from "../core/refusal.ts";
import type { FilmAnswer, FilmQuestion } from "./film-questions.ts";
import type { FilmWork } from "./film-work.ts";
import { Thread, type ThreadLimits } from "./thread.ts";

/**
 * The slowest picture that was met, a JPEG 2000 that claims 120 million pixels, is read within a fifth of it. A codec keeps
 * the memory of its largest picture, so an idle thread is not kept for long.
 */
const usual: ThreadLimits = { workMs: 180_000, idleMs: 20_000, heapMb: 512 };

/**
 * Film work in threads of its own, one for films that come in and one for previews: a server answers others meanwhile,
 * and what a hostile file brings down is its thread alone.
 * Takes the thread's program as it was built, and limits other than the usual.
 */
export function filmWorkAside(program: string, limits: ThreadLimits = usual): FilmWork {
  const thread = () => new Thread<FilmQuestion, FilmAnswer>(program, limits, tooLarge);
  const [incoming, previews] = [thread(), thread()];
  return {
    prepare: async (bytes, wanted) => {
      const answer = await incoming.ask({ ask: "prepare", bytes, wanted }, wanted.name);
      if (answer.is === "prepared") return answer.film;
      throw failed(answer);
    },
    preview: async (bytes, maxSide) => {
      const answer = await previews.ask({ ask: "preview", bytes, maxSide }, "the kept film");
      if (answer.is === "preview") return answer.png;
      throw failed(answer);
    },
    close: async () => {
      await Promise.all([incoming.end(), previews.end()]);
    },
  };
}

function tooLarge(name: string, what: string, cause?: unknown): Refusal {
  const says = `Cannot read ${name}: it ${what}; export a smaller part or a lower resolution`;
  const refusal = new Refusal("file.tooLarge", says, { file: name });
  refusal.cause = cause;
  return refusal;
}

function failed(answer: FilmAnswer): Error {
  if (answer.is === "refused") return new Refusal(answer.code, answer.message, answer.facts);
  return new Error(answer.is === "broken" ? answer.says : `an answer to another question: ${answer.is}`);
}
