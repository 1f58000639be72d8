import { KeyHint } from "../../../parts/key-hint.tsx";

const keys: readonly (readonly [where: string, keys: readonly (readonly [key: string, does: string])[]])[] = [
  [
    "Cold, heat",
    [
      ["n", "none"],
      ["N N", "normal"],
      ["h", "heightened"],
      ["1 2", "then the seconds that it stays"],
    ],
  ],
  [
    "Touch",
    [
      ["n", "none"],
      ["s", "slight"],
      ["p", "painful"],
    ],
  ],
  ["Electric", [["n", "none, or the number"]]],
  [
    "Probing",
    [
      ["3", "a digit a place, mesial to distal, buccal then inner side"],
      ["+", "before the second digit of 10 and more"],
    ],
  ],
  [
    "Everywhere",
    [
      ["x", "not done"],
      ["ArrowLeft", "tooth to tooth, test to test"],
      ["Control+↓", "next not done"],
    ],
  ],
];

/** The keys of the sheet, in sight. */
export const SheetKeys = () => (
  <dl className="sheet-keys">
    {keys.map(([where, list]) => (
      <div key={where}>
        <dt>{where}</dt>
        {list.map(([key, does]) => (
          <dd key={key}>
            <KeyHint keys={key} /> <span className="unseen">{key}: </span>
            {does}
          </dd>
        ))}
      </div>
    ))}
  </dl>
);
