/** Every code that a refusal can carry. Each is described in docs/refusals.md; a test holds both together. */
export const refusalCodes = [
  "input.invalid",
  "input.impossible",
  "input.notDeterminable",
  "topic.unknown",
  "tooth.unknown",
  "trace.tooFewPoints",
  "calibration.missing",
  "file.notImage",
  "file.truncated",
  "file.damaged",
  "file.impossibleSize",
  "file.tooLarge",
  "file.unsupported",
  "file.missing",
  "record.conflict",
  "record.notFound",
  "record.nothingToUndo",
  "record.newerVersion",
  "store.newerVersion",
  "store.brokenChain",
  "store.unwritable",
  "store.full",
  "store.corrupt",
  "backup.invalid",
  "server.portInUse",
  "server.alreadyRunning",
  "server.forbidden",
  "server.tooLarge",
  "export.failed",
] as const;

/** One of the closed list of codes. */
export type RefusalCode = (typeof refusalCodes)[number];

/** One fault in an input: where it stands, what was found and what is accepted. */
export interface Fault {
  /** Path in the input, as `views[1].horizontalAngleDeg`; empty for the whole. */
  readonly path: string;
  /** What was found and what is accepted, in one line. */
  readonly says: string;
}

/**
 * What the program says when it can't do a thing: a code of the closed list, a sentence that names the thing and the
 * way out, and facts without any patient detail.
 */
export class Refusal extends Error {
  override readonly name = "Refusal";
  constructor(
    readonly code: RefusalCode,
    message: string,
    readonly facts: Readonly<Record<string, unknown>> = {},
    readonly faults: readonly Fault[] = [],
  ) {
    super(message);
  }
}

/** A refusal of an input for one fault at one path. */
export const faultAt = (path: string, says: string, code: RefusalCode = "input.impossible"): Refusal =>
  new Refusal(code, path === "" ? says : `${path}: ${says}`, {}, [{ path, says }]);
