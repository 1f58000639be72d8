import { Refusal } from "../../../core/refusal.ts";

/** The part of a worker's global scope that is used here. */
interface WorkerScope {
  onmessage: ((event: MessageEvent) => void) | null;
  postMessage(message: unknown, handedOver: Transferable[]): void;
}

/** An answer and the memory that goes over with it. */
export interface Answered<Answer> {
  readonly answer: Answer;
  readonly handedOver?: Transferable[];
}

/** The worker's end of a line: answers each question, tells news in between, and hands refusals back in words. */
export function answerQuestions<Question, Answer>(
  answer: (question: Question, tell: (news: Answer) => void) => Promise<Answered<Answer>> | Answered<Answer>,
): void {
  const scope = globalThis as unknown as WorkerScope;
  const tell = (news: Answer) => scope.postMessage({ line: 0, news }, []);
  scope.onmessage = async ({ data }: MessageEvent<{ line: number; question: Question }>) => {
    try {
      const { answer: found, handedOver = [] } = await answer(data.question, tell);
      scope.postMessage({ line: data.line, answer: found }, handedOver);
    } catch (error) {
      scope.postMessage({ line: data.line, refused: refusedBy(error) }, []);
    }
  };
}

function refusedBy(error: unknown) {
  if (error instanceof Refusal) return { code: error.code, message: error.message };
  const message = error instanceof Error ? error.message : String(error);
  return { code: "bug", message: `Cannot show this film: ${message}` };
}
