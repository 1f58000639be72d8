import { parentPort } from "node:worker_threads";
import { Refusal } from "../core/refusal.ts";
import type { FilmAnswer, FilmQuestion } from "./film-questions.ts";
import { filmWorkHere } from "./film-work.ts";

/** The thread beside the server: reads one film after the other and says what came of it. */
parentPort?.on("message", async (question: FilmQuestion) => {
  const answer = await answerTo(question);
  parentPort?.postMessage(answer, memoryOf(answer));
});

async function answerTo(question: FilmQuestion): Promise<FilmAnswer> {
  try {
    if (question.ask === "prepare")
      return { is: "prepared", film: await filmWorkHere.prepare(question.bytes, question.wanted) };
    return { is: "preview", png: await filmWorkHere.preview(question.bytes, question.maxSide) };
  } catch (thrown) {
    if (thrown instanceof Refusal)
      return { is: "refused", code: thrown.code, message: thrown.message, facts: thrown.facts };
    return { is: "broken", says: thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown) };
  }
}

/** The memory that goes over with an answer and need not be copied. */
function memoryOf(answer: FilmAnswer): ArrayBuffer[] {
  const bytes = answer.is === "prepared" ? answer.film.png : answer.is === "preview" ? answer.png : undefined;
  return bytes !== undefined && bytes.buffer instanceof ArrayBuffer ? [bytes.buffer] : [];
}
