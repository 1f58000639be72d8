import barone from "../../../../data/barone-2010/source.json" with { type: "json" };
import cuje from "../../../../data/cuje-2010/source.json" with { type: "json" };
import dioguardi from "../../../../data/dioguardi-2024/source.json" with { type: "json" };
import spili from "../../../../data/spili-2005/source.json" with { type: "json" };
import type { RemovalInput } from "../removal-input.ts";
import { type Count, splitsWithShare } from "./denominators.ts";
import {
  type From,
  fromCount,
  fromPublished,
  fromSummed,
  publishedCount,
  publishedShare,
} from "./published-figures.ts";
import { countedShare, oneOf, type UncertainShare } from "./uncertain-share.ts";

/** A share that a way rests on, with the figures that it is drawn from and those that stand beside it. */
export interface Arm extends UncertainShare {
  readonly from: readonly From[];
}

type Lesion = RemovalInput["lesion"];

const withFragment = publishedCount("spili-2005", "with-fragment");
const without: Count = { events: spili.withoutFragment.healed, n: spili.withoutFragment.n };

/** Healed with the fragment left in place. @source docs/methods/removal.md C10 */
export function leftArm(lesion: Lesion): Arm {
  const lesionShare = publishedShare("spili-2005", "with-fragment-lesion");
  return {
    ...stratum(withFragment, lesionShare, lesion),
    from: [
      fromCount("spili-2005", withFragment, "healed with a fragment left"),
      { ...fromPublished("spili-2005", "with-fragment-lesion"), inSum: lesion !== undefined, note: openDenominators },
      { ...fromPublished("panitvisai-2010", "fragment-review-lesion"), note: sameCases },
      { ...fromPublished("panitvisai-2010", "fragment-review-none"), note: sameCases },
    ],
  };
}

const openDenominators = "The denominators are not printed: each that the printed share allows is as likely.";
const sameCases = "Holds the matched series once more, without counts by lesion: it stands beside.";

/** Healed in the matched teeth without a fragment. @source docs/methods/removal.md C10 */
export function freeArm(lesion: Lesion): Arm {
  const { lesionShare } = spili.withoutFragment;
  const says = "healed in matched teeth without a fragment";
  return {
    ...stratum(without, lesionShare, lesion),
    from: [
      fromCount("spili-2005", without, says),
      {
        ...{ source: "spili-2005", says: `${says}, with a lesion before`, column: "healed", share: lesionShare },
        ...{ inSum: lesion !== undefined, note: openDenominators, mark: "seen" },
      },
    ],
  };
}

function stratum(whole: Count, share: number, lesion: Lesion): UncertainShare {
  if (lesion === undefined) return countedShare(whole);
  const part = lesion === "present" ? "inside" : "outside";
  return oneOf(splitsWithShare(whole, share).map((split) => countedShare(split[part])));
}

/** That the attempt perforates the root. @source docs/methods/removal.md C9 */
export const perforationArm: Arm = {
  ...oneOf([dioguardi, cuje].map(({ perforation }) => countedShare(perforation))),
  from: [dioguardi, cuje].map(({ id, perforation: { says, ...count } }) => ({
    ...fromCount(id, count, `perforated, ${says}`),
  })),
};

/** Healed after a perforation was sealed. @source docs/methods/removal.md C9 */
export const sealedArm: Arm = armOf(
  [
    ["mente-2010", "perforation-small"],
    ["gorni-2022", "perforation-first"],
  ],
  [
    ["siew-2015", "perforation-pooled"],
    ["de-chevigny-2008-retreatment", "retreat-pooled-perforation"],
    ["farzaneh-2004", "retreat-perforation"],
  ],
);

/** Healed after surgery. @source docs/methods/removal.md C11 */
export const surgeryArm: Arm = armOf(
  [
    ["barone-2010", "surgery-all"],
    ["pinto-2020", "microsurgery-cohorts"],
    ["pinto-2020", "microsurgery-trials"],
  ],
  [
    ["setzer-2010", "root-end-micro"],
    ["setzer-2010", "root-end-traditional"],
  ],
);

/** The tooth is still there after a root canal treatment or a retreatment. @source docs/methods/removal.md C11 */
export const keptArm: Arm = armOf(
  [
    ["ng-2011-survival", "survival-primary"],
    ["ng-2011-survival", "survival-secondary"],
  ],
  [],
);

const inPlace: Count = { events: barone.extracted.n - barone.extracted.events, n: barone.extracted.n };
/** The tooth is still there after surgery. @source docs/methods/removal.md C11 */
export const keptAfterSurgeryArm: Arm = {
  ...countedShare(inPlace),
  from: [
    {
      ...{ ...fromCount("barone-2010", inPlace, "not known to be extracted 4 to 10 years after surgery") },
      ...{ column: "kept", note: "Teeth that nobody saw again are counted as in place." },
    },
  ],
};

/** What replaces an extracted tooth: it stands beside, the tooth itself is gone. */
export const replacedFrom: readonly From[] = [
  fromPublished("hjalmarsson-2016", "implant-10y"),
  fromPublished("torabinejad-2015", "implant-crowns"),
].map((one) => ({ ...one, note: "Of the implant, not of the tooth." }));

type Ids = readonly [source: string, id: string];

function armOf(summed: readonly Ids[], beside: readonly Ids[]): Arm {
  return {
    ...oneOf(summed.map((ids) => countedShare(publishedCount(ids[0], ids[1])))),
    from: [...summed.map((ids) => fromSummed(ids[0], ids[1])), ...beside.map((ids) => fromPublished(ids[0], ids[1]))],
  };
}
