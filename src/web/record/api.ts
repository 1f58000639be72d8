import type { Fault } from "../../core/refusal.ts";
import type { RefusalView } from "../../server/api.ts";

/** What the server, or the way to it, said no with; its message can be shown as it stands. */
export class Refused extends Error {
  override readonly name = "Refused";
  constructor(
    readonly code: RefusalView["code"] | "unreachable",
    message: string,
    readonly facts: Readonly<Record<string, unknown>> = {},
    readonly faults: readonly Fault[] = [],
  ) {
    super(message);
  }
}

/** The one sentence for a program that does not answer. */
const unreachable = () =>
  new Refused("unreachable", "Cannot reach Canalog: the program does not answer. Is it still running on this machine?");

/** How a request differs from a plain reading. */
export interface Asking {
  readonly method?: "GET" | "POST" | "PUT" | "DELETE";
  /** Sent as JSON. */
  readonly body?: unknown;
  /** Sent as it is; for files. */
  readonly bytes?: Blob | Uint8Array<ArrayBuffer>;
  readonly signal?: AbortSignal;
}

/**
 * What the local API answers under a path.
 * @throws Refused with the server's words, or `unreachable`.
 */
export async function ask<Answer>(path: string, asking: Asking = {}): Promise<Answer> {
  const response = await fetch(`/api${path}`, requestOf(asking)).catch((error: unknown) => {
    if (asking.signal?.aborted) throw error;
    throw unreachable();
  });
  const text = await response.text();
  const answer: unknown = text === "" ? undefined : readJson(text);
  if (!response.ok) throw refusedBy(answer, response.status);
  return answer as Answer;
}

function requestOf({ method = "GET", body, bytes, signal }: Asking): RequestInit {
  const request: RequestInit = { method, credentials: "same-origin" };
  if (signal) request.signal = signal;
  if (bytes !== undefined) return { ...request, body: bytes, headers: { "content-type": "application/octet-stream" } };
  if (body === undefined) return request;
  return { ...request, body: JSON.stringify(body), headers: { "content-type": "application/json" } };
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function refusedBy(answer: unknown, status: number): Refused {
  if (isRefusal(answer)) return new Refused(answer.code, answer.message, answer.facts ?? {}, answer.faults ?? []);
  return new Refused("bug", `Cannot go on: the program answered with status ${status} and no words.`);
}

function isRefusal(answer: unknown): answer is RefusalView {
  return typeof answer === "object" && answer !== null && "code" in answer && "message" in answer;
}
