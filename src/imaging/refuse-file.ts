import { Refusal, type RefusalCode } from "../core/refusal.ts";

/** Why a file can't be read, before its name is put to it. */
export interface FileFault {
  readonly code: RefusalCode;
  /** What was found and the way out, as the second half of "Cannot read <name>: ". */
  readonly state: string;
  readonly facts?: Readonly<Record<string, unknown>>;
  /** What a library threw, kept for whoever debugs; never shown. */
  readonly cause?: unknown;
}

/**
 * The refusal of one file, with its name in the sentence.
 * Takes the file's name as the person knows it and the fault. Gives a Refusal to throw, its cause kept.
 */
export function refuseFile(name: string, fault: FileFault): Refusal {
  const refusal = new Refusal(fault.code, `Cannot read ${name}: ${fault.state}`, { file: name, ...fault.facts });
  if (fault.cause !== undefined) refusal.cause = errorOf(fault.cause);
  return refusal;
}

/** An error without what hangs on it: a parser may throw a text, or hand out with the error all it had read. */
function errorOf(cause: unknown): Error {
  if (cause instanceof Error) return cause;
  const inner: unknown = typeof cause === "object" && cause !== null ? Reflect.get(cause, "exception") : cause;
  return inner instanceof Error ? inner : new Error(String(inner));
}

/**
 * What a library's reading gives, with anything it throws turned into a refusal of the file.
 * Takes the name, the fault to state when the library throws, and the reading itself.
 * @throws Refusal the fault's code, or the refusal that the reading itself threw.
 */
export function readOrRefuse<Result>(name: string, fault: FileFault, read: () => Result): Result {
  try {
    return read();
  } catch (cause) {
    if (cause instanceof Refusal) throw cause;
    throw refuseFile(name, { ...fault, cause });
  }
}
