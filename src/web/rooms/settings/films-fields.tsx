import { Link } from "wouter";
import type { Settings } from "../../../record/settings.ts";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { clickSigmaOrigin } from "../../words/click-sigma-words.ts";
import { sentenceInWords } from "../../words/value-words.ts";

/** How far a click misses, and where a length stops. */
export const FilmsFields = ({ settings }: { readonly settings: Settings }) => (
  <div className="settings-one">
    <div className="settings-figure">
      <NumberField at="clickSigmaPx" label="Click error" unit="px" required />
      <p className="quiet">
        How far a click of yours misses, as a standard deviation per axis. Every measure on a film carries it.{" "}
        <Origin settings={settings} />
      </p>
    </div>
    <div className="settings-figure">
      <NumberField at="stopShortMm" label="Stop short of the apex" unit="mm" required />
      <p className="quiet">How far short of the radiographic apex a length stops; 0.5 is common practice.</p>
    </div>
  </div>
);

/** Where the click error came from, and the way to measure it. */
const Origin = ({ settings }: { readonly settings: Settings }) => (
  <span>
    {sentenceInWords(clickSigmaOrigin(settings))}.{" "}
    {settings.clickSigmaFrom === undefined ? (
      <Link href="/calibration">Measure it</Link>
    ) : (
      <Link href={`/calibration/clicks/${settings.clickSigmaFrom.exerciseId}`}>Its exercise</Link>
    )}
  </span>
);
