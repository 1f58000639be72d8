import { Refusal } from "../core/refusal.ts";
import { jsonFault } from "./compute-json-fault.ts";

/** What standard input gives, piece by piece. */
export type InputStream = AsyncIterable<string | Uint8Array>;

/**
 * The JSON value that comes on a stream of UTF-8 text, with or without a byte order mark.
 * @throws Refusal `input.invalid` with line and column of the first place that is not JSON.
 */
export async function computeInput(stream: InputStream): Promise<unknown> {
  const text = await textOf(stream);
  const fault = jsonFault(text);
  if (fault === undefined) return JSON.parse(text);
  const path = `line ${fault.line}, column ${fault.column}`;
  throw new Refusal("input.invalid", "Cannot read the input: it is not JSON", {}, [{ path, says: fault.says }]);
}

async function textOf(stream: InputStream): Promise<string> {
  const pieces: Uint8Array[] = [];
  for await (const piece of stream) pieces.push(typeof piece === "string" ? Buffer.from(piece) : piece);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(pieces));
  } catch {
    const says = "found bytes that are not UTF-8; JSON in UTF-8 is accepted";
    throw new Refusal("input.invalid", "Cannot read the input: it is not UTF-8 text", {}, [{ path: "input", says }]);
  }
}
