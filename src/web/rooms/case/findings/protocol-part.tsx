import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Optional } from "../../../parts/fields/rows.tsx";

/** The cuts that a sheet is judged by where the sources conflict: asked, never taken by themselves. */
export const ProtocolPart = () => (
  <section className="form-part">
    <h2>Your own cuts</h2>
    <div className="fields">
      <Optional at="protocol" label="cuts" add="Write a cut of your own" start={() => ({})}>
        <NumberField at="lingeringFromSeconds" label="A thermal reply lingers from" unit="s" />
        <NumberField at="newTraumaUntilDays" label="A trauma is new up to" unit="days" />
      </Optional>
    </div>
    <p className="quiet">
      Without a cut a reply of 3 to 30 s asks for a second sign, and a trauma of 4 to 9 months is neither new nor old:
      the sources conflict there.
    </p>
  </section>
);
