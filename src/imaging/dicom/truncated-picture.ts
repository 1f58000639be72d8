import { refuseFile } from "../refuse-file.ts";

/** The refusal of a picture that holds fewer bytes than its size needs. */
export function truncatedPicture(name: string, expectedBytes: number, foundBytes: number): Error {
  return refuseFile(name, {
    code: "file.truncated",
    state: `its picture ends early: ${expectedBytes} bytes are needed and ${foundBytes} are there; copy it again`,
    facts: { expectedBytes, foundBytes },
  });
}
