import type { RefusalCode } from "./refusal.ts";

/** How a refusal ends: the exit code of a command, and the HTTP status of a request. */
export interface Outcome {
  /** 2: the input is at fault. 3: the world is (disk, port, a broken chain). */
  readonly exitCode: 2 | 3;
  readonly httpStatus: number;
}

/** The one table from a refusal's code to its outcome; docs/refusals.md shows the same, and a test holds both together. */
export const refusalOutcome: Readonly<Record<RefusalCode, Outcome>> = {
  "input.invalid": { exitCode: 2, httpStatus: 400 },
  "input.impossible": { exitCode: 2, httpStatus: 422 },
  "input.notDeterminable": { exitCode: 2, httpStatus: 422 },
  "topic.unknown": { exitCode: 2, httpStatus: 404 },
  "tooth.unknown": { exitCode: 2, httpStatus: 422 },
  "trace.tooFewPoints": { exitCode: 2, httpStatus: 422 },
  "calibration.missing": { exitCode: 2, httpStatus: 422 },
  "file.notImage": { exitCode: 2, httpStatus: 415 },
  "file.truncated": { exitCode: 2, httpStatus: 422 },
  "file.damaged": { exitCode: 2, httpStatus: 422 },
  "file.impossibleSize": { exitCode: 2, httpStatus: 422 },
  "file.tooLarge": { exitCode: 2, httpStatus: 413 },
  "file.unsupported": { exitCode: 2, httpStatus: 415 },
  "file.missing": { exitCode: 2, httpStatus: 404 },
  "record.conflict": { exitCode: 2, httpStatus: 409 },
  "record.notFound": { exitCode: 2, httpStatus: 404 },
  "record.nothingToUndo": { exitCode: 2, httpStatus: 409 },
  "record.newerVersion": { exitCode: 3, httpStatus: 409 },
  "store.newerVersion": { exitCode: 3, httpStatus: 503 },
  "store.brokenChain": { exitCode: 3, httpStatus: 500 },
  "store.unwritable": { exitCode: 3, httpStatus: 503 },
  "store.full": { exitCode: 3, httpStatus: 507 },
  "store.corrupt": { exitCode: 3, httpStatus: 500 },
  "backup.invalid": { exitCode: 2, httpStatus: 422 },
  "server.portInUse": { exitCode: 3, httpStatus: 503 },
  "server.alreadyRunning": { exitCode: 3, httpStatus: 503 },
  "server.forbidden": { exitCode: 3, httpStatus: 403 },
  "server.tooLarge": { exitCode: 2, httpStatus: 413 },
  "export.failed": { exitCode: 3, httpStatus: 500 },
};
