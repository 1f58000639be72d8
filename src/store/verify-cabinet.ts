import { Refusal } from "../core/refusal.ts";
import { type CabinetStanding, replayCabinet } from "../record/cabinet/cabinet-standing.ts";
import { canonicalJson } from "../record/canonical-json.ts";
import { readCabinetChanges, readCabinetStanding } from "./cabinet-rows.ts";
import type { Db } from "./dialect.ts";
import type { StoreFault } from "./store.ts";

/** What is wrong with the cabinet: its chain, and what stands against the chain. */
export async function cabinetFaults(db: Db): Promise<StoreFault[]> {
  return db.transaction().execute(async (trx) => {
    try {
      const replayed = replayCabinet(await readCabinetChanges(trx));
      const stored = await readCabinetStanding(trx);
      return asText(stored) === asText(replayed) ? [] : [fault("what stands differs from its chain")];
    } catch (error) {
      return [fault(error instanceof Refusal ? error.message : "its rows can't be read")];
    }
  });
}

const fault = (says: string): StoreFault => ({ what: "cabinet", where: "cabinet", says });

const asText = ({ revisions, ...standing }: CabinetStanding): string =>
  canonicalJson({ ...standing, revisions: Object.fromEntries(revisions) });
