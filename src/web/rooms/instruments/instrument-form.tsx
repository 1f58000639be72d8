import { stationsAtFirst, withStation } from "../../../record/cabinet/stations.ts";
import type { InstrumentGeometry } from "../../../record/instrument-name.ts";
import { countedWords, sectionWords } from "../../../record/words/cabinet-words.ts";
import { alloyWords, movementWords } from "../../../record/words/visit-words.ts";
import { Button } from "../../parts/button.tsx";
import { SelectField } from "../../parts/fields/choice-field.tsx";
import { useField } from "../../parts/fields/editing.tsx";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { Optional, Rows } from "../../parts/fields/rows.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { capital } from "../../words/capital.ts";
import "./instrument-form.css";

/** What an instrument is, how the motor drives it, and when its files are discarded. */
export const InstrumentForm = () => (
  <>
    <section className="form-part">
      <h3>Geometry and alloy</h3>
      <div className="fields">
        <TextField at="name" label="Name" placeholder="as the clinic calls it; no maker's name" />
        <NumberField at="size" label="Size, 1/100 mm at the tip" required />
        <NumberField at="taper" label="Taper at the tip" digits={2} required />
        <SelectField at="section" label="Section" words={sectionWords} unset="not said" />
        <SelectField at="alloy" label="Alloy" words={alloyWords} />
        <NumberField at="workingMm" label="Working part" unit="mm" placeholder="16" />
        <NumberField at="lengthMm" label="Length, tip to handle" unit="mm" />
        <NumberField at="maxDiameterMm" label="Stops widening at" unit="mm" digits={2} />
      </div>
      <VariableTaper />
    </section>
    <section className="form-part">
      <h3>Movement and motor</h3>
      <div className="fields">
        <SelectField at="movement" label="Movement" words={movementWords} />
        <NumberField at="rpm" label="Speed" unit="turns a minute" />
        <NumberField at="torqueLimitNmm" label="Torque limit" unit="N mm" />
        <NumberField at="seconds" label="Usual time in one canal" unit="s" />
      </div>
      <div className="fields">
        <Reciprocation />
      </div>
    </section>
    <Limits />
    <div className="fields">
      <TextField at="note" label="Note" prose optional />
    </div>
  </>
);

/** How far an instrument turns to and fro. */
export const Reciprocation = () => (
  <Optional
    at="reciprocation"
    label="turning to and fro"
    add="Note how it turns to and fro"
    start={() => ({ forwardDeg: 150, backDeg: 30, frequencyHz: 10 })}
  >
    <NumberField at="forwardDeg" label="Forward" unit="°" required />
    <NumberField at="backDeg" label="Back" unit="°" required />
    <NumberField at="frequencyHz" label="Pairs of strokes" unit="a second" required />
  </Optional>
);

/** Diameters at stations along the instrument; where they stand they rule over the taper. */
export function VariableTaper() {
  const field = useField("profile", "Variable taper");
  const geometry = useField("", "Instrument").value as InstrumentGeometry;
  if (geometry.profile === undefined)
    return field.readOnly ? null : (
      <Button weight="bare" onClick={() => field.write(stationsAtFirst(geometry), "stations noted", "now")}>
        Its taper varies: give diameters at stations
      </Button>
    );
  return (
    <div className="stations">
      <p className="field-label">Variable taper: diameters from the tip on; they rule over the taper</p>
      <Rows
        at="profile"
        label="Stations"
        start={() => undefined}
        nameOf={(_, index) => `station ${index + 1}`}
        columns={[
          {
            head: "From the tip",
            unit: "mm",
            cell: <NumberField at="atMm" label="From the tip" unit="mm" digits={1} required bare />,
            figure: true,
          },
          {
            head: "Diameter",
            unit: "mm",
            cell: <NumberField at="diameterMm" label="Diameter" unit="mm" digits={2} required bare />,
            figure: true,
          },
        ]}
      />
      {!field.readOnly && (
        <div className="cabinet-ways">
          <Button
            weight="bare"
            onClick={() => field.write(withStation(geometry.profile ?? []), "station added", "now")}
          >
            Add a station
          </Button>
          <Button weight="bare" onClick={() => field.write(undefined, "taken out", "now")}>
            Its taper is constant: take the stations out
          </Button>
        </div>
      )}
    </div>
  );
}

function Limits() {
  return (
    <section className="form-part">
      <h3>Discard a file of it after</h3>
      <div className="fields">
        {Object.entries(countedWords).map(([name, word]) => (
          <NumberField key={name} at={`limits.${name}`} label={capital(word)} placeholder="no limit" />
        ))}
      </div>
      <p className="quiet">
        Your own limits; none is set for you. A file that passes one is flagged, with which and by how much.
      </p>
    </section>
  );
}
