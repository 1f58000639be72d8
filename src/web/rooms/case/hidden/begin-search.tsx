import { chanceText } from "../../../../figures/chance-text.ts";
import type { FeatureView } from "../../../../server/api.ts";
import { Button } from "../../../parts/button.tsx";
import { countOf } from "../../../parts/figures-in-words.ts";
import { nameOfFeature } from "./search-in-words.ts";

interface BeginSearchOptions {
  readonly features: readonly FeatureView[];
  /** Nothing was searched for yet. */
  readonly isFirst: boolean;
  /** Absent where the case is only looked at. */
  readonly begin?: (feature: FeatureView["feature"]) => void;
}

/** What this kind of tooth may hide beside what is searched for already, with how often it was counted. */
export const BeginSearch = ({ features, isFirst, begin }: BeginSearchOptions) => (
  <section className="form-part">
    <h2>{isFirst ? "This kind of tooth may have" : "It may also have"}</h2>
    <ul className="hidden-list">
      {features.map((one) => (
        <li key={one.feature}>
          <span>
            <strong>{nameOfFeature(one.feature)}</strong>
            <span className="quiet">
              {" "}
              {chanceText(one.prior)} by {countOf(one.series.length, "published count")}:{" "}
              {one.series.map(({ n, N, region }) => `${n}/${N} ${region}`).join(", ")}
            </span>
          </span>
          {begin && (
            <Button onClick={() => begin(one.feature)}>
              Look for it<span className="unseen">: {one.is}</span>
            </Button>
          )}
        </li>
      ))}
    </ul>
  </section>
);
