import { useId } from "react";
import type { Fault } from "../../../../../core/refusal.ts";
import { type RoomFigure, roomOffered } from "../../../../../ledger/room-offered.ts";
import { sourceName } from "../../../../../pages/source-name.ts";
import { Button } from "../../../../parts/button.tsx";
import { Labelled } from "../../../../parts/fields/labelled.tsx";
import { numberInWords, withUnit } from "../../../../parts/figures-in-words.ts";
import { FigureField } from "./figure-field.tsx";
import type { RoomDraft } from "./room-draft.ts";
import "./room-fields.css";

interface RoomFieldsOptions {
  readonly value: RoomDraft;
  /** Told in words, as `air changes: 6 an hour`. */
  readonly change: (value: RoomDraft, inWords: string) => void;
  /** Paths inside the room, as `nearField.radiusM`. */
  readonly faults: readonly Fault[];
  readonly readOnly?: boolean;
}

interface FigureOfRoom {
  readonly name: RoomFigure;
  readonly label: string;
  readonly unit: string;
  readonly path: string;
}

const figures: readonly FigureOfRoom[] = [
  { name: "volumeM3", label: "Volume of the room", unit: "m³", path: "volumeM3" },
  {
    name: "airChangesPerHour",
    label: "Fresh air: room volumes an hour, 0 if closed",
    unit: "per h",
    path: "airChangesPerHour",
  },
  { name: "radiusM", label: "Air near the mouth: radius", unit: "m", path: "nearField.radiusM" },
  { name: "airSpeedMPerMin", label: "Speed of the air there", unit: "m/min", path: "nearField.airSpeedMPerMin" },
];

/** The room in which a solvent is used. Figures from elsewhere stand beside each field, to be pressed; none is filled in. */
export const RoomFields = (options: RoomFieldsOptions) => (
  <div className="room-fields">
    {figures.map((figure) => (
      <OneFigure key={figure.name} {...options} figure={figure} />
    ))}
    <OtherFields {...options} />
  </div>
);

function OneFigure({ value, change, faults, readOnly, figure }: RoomFieldsOptions & { readonly figure: FigureOfRoom }) {
  const { name, label, unit, path } = figure;
  const write = (next: number | undefined, from?: string) =>
    change(
      withFigure(from === undefined ? value : withOrigin(value, from), name, next),
      `${label.toLowerCase()}: ${next === undefined ? "emptied" : withUnit(String(next), unit)}`,
    );
  return (
    <div className="room-figure">
      <FigureField
        {...{ label, unit, readOnly }}
        value={figureOf(value, name)}
        change={(next) => write(next)}
        fault={faults.find((one) => one.path === path)?.says}
      />
      <ul className="room-offers" aria-label={`Figures from elsewhere for: ${label.toLowerCase()}`}>
        {roomOffered[name].map((one) => {
          const from = one.source === undefined ? "an assumption" : `${sourceName(one.source)}, ${one.mark}`;
          return (
            <li key={one.value}>
              {readOnly !== true && (
                <Button onClick={() => write(one.value, `${label.toLowerCase()}: ${one.says} (${from})`)}>
                  {withUnit(numberInWords(one.value, one.value % 1 === 0 ? 0 : 1), unit)}
                </Button>
              )}
              <span>
                {one.says}; {from}
              </span>
            </li>
          );
        })}
      </ul>
    </div>
  );
}

function OtherFields({ value, change, faults, readOnly = false }: RoomFieldsOptions) {
  const [name, from] = [useId(), useId()];
  const faultAt = (path: string) => faults.find((one) => one.path === path)?.says;
  return (
    <div className="fields room-others">
      <FigureField
        label="Temperature; 25 is taken where empty"
        unit="°C"
        value={value.temperatureC}
        fault={faultAt("temperatureC")}
        readOnly={readOnly}
        change={(temperatureC) => change({ ...value, temperatureC }, `temperature: ${temperatureC ?? "emptied"}`)}
      />
      <AssistantIn {...{ value, change, faults, readOnly }} />
      <Labelled field={{ id: name, fault: faultAt("name") }} label="Name of the room">
        <input
          id={name}
          className="field-line"
          value={value.name ?? ""}
          readOnly={readOnly}
          onChange={({ target }) => change({ ...value, name: emptied(target.value) }, "name of the room")}
        />
      </Labelled>
      <Labelled field={{ id: from, fault: faultAt("from") }} label="Where these figures come from" wide>
        <input
          id={from}
          className="field-line"
          value={value.from ?? ""}
          readOnly={readOnly}
          onChange={({ target }) => change({ ...value, from: target.value }, "where the room's figures come from")}
        />
      </Labelled>
    </div>
  );
}

const placesOfAssistant = { near: "the air near the mouth", far: "the rest of the room" } as const;

function AssistantIn({ value, change, readOnly = false }: RoomFieldsOptions) {
  const group = useId();
  const choices: readonly (keyof typeof placesOfAssistant)[] = ["near", "far"];
  return (
    <div className="field" role="radiogroup" aria-labelledby={group}>
      <span className="field-label" id={group}>
        The assistant breathes; near the mouth where nothing is said
      </span>
      <div className="field-choices">
        {choices.map((one) => (
          <label key={one} className="field-choice">
            <input
              type="radio"
              name={group}
              checked={value.assistantIn === one}
              disabled={readOnly}
              onChange={() =>
                change({ ...value, assistantIn: one }, `the assistant breathes: ${placesOfAssistant[one]}`)
              }
            />
            <span>{placesOfAssistant[one]}</span>
          </label>
        ))}
      </div>
    </div>
  );
}

const emptied = (text: string): string | undefined => (text === "" ? undefined : text);

const figureOf = (room: RoomDraft, name: RoomFigure): number | undefined =>
  name === "radiusM" || name === "airSpeedMPerMin" ? room.nearField?.[name] : room[name];

/** Without both of its figures there is no air near the mouth apart from the room's. */
function withFigure(room: RoomDraft, name: RoomFigure, value: number | undefined): RoomDraft {
  if (name !== "radiusM" && name !== "airSpeedMPerMin") return { ...room, [name]: value };
  const near: NonNullable<RoomDraft["nearField"]> = { ...room.nearField, [name]: value };
  const isEmpty = near.radiusM === undefined && near.airSpeedMPerMin === undefined;
  return { ...room, nearField: isEmpty ? undefined : near };
}

/** A figure that was taken from elsewhere says so where the room's figures come from; what stood there of it before goes. */
function withOrigin(room: RoomDraft, origin: string): RoomDraft {
  const about = origin.split(":")[0] ?? origin;
  const kept = (room.from ?? "").split("; ").filter((one) => one !== "" && !one.startsWith(`${about}:`));
  const from = [...kept, origin].join("; ");
  return { ...room, from: from.length <= 300 ? from : room.from };
}
