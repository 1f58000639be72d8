import { Link } from "wouter";
import { useCabinet } from "../../../record/cabinet.ts";
import { nameOfItem } from "../../instruments/item-names.ts";
import { fileStillInUse } from "./file-still-in-use.ts";
import { useMishap } from "./use-mishap.ts";

/** Says of a counted file that broke that the cabinet still offers it, and leads to where it is discarded. */
export function BrokenFile() {
  const { view } = useCabinet();
  const { mishap } = useMishap("Instrument");
  const file = fileStillInUse(mishap, view?.items ?? []);
  return file === undefined ? null : (
    <p className="look">
      ◇ The cabinet still offers {nameOfItem(file)} for the next canal:{" "}
      <Link href={`/instruments/${file.id}`}>discard it there</Link>.
    </p>
  );
}
