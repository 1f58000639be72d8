import type { BodyPath } from "../../record/body-path.ts";
import { useField } from "./editing.tsx";
import { faultProps, Labelled } from "./labelled.tsx";

interface TextFieldOptions {
  readonly at: BodyPath;
  readonly label: string;
  /** Several lines that grow with what is written. */
  readonly prose?: boolean;
  /** One line of words that goes on below where the place is narrow, as in a table. */
  readonly wraps?: boolean;
  /** Stays in the record as absent when emptied. */
  readonly optional?: boolean;
  readonly bare?: boolean;
  readonly placeholder?: string;
  /** Offers these while typing. */
  readonly offers?: readonly string[];
}

/** A line or a paragraph of free words. */
export function TextField({
  at,
  label,
  prose = false,
  wraps = false,
  optional = false,
  bare,
  placeholder,
  offers,
}: TextFieldOptions) {
  const field = useField(at, label);
  const value = typeof field.value === "string" ? field.value : "";
  const write = (text: string) => field.write(optional && text === "" ? undefined : text, spoken(text), "typing");
  const shared = {
    id: field.id,
    value,
    placeholder: placeholder ?? (bare ? " " : undefined),
    readOnly: field.readOnly,
    ...faultProps(field),
  };
  return (
    <Labelled field={field} label={bare ? field.fullLabel : label} bare={bare} wide={prose}>
      {prose || wraps ? (
        <textarea
          {...shared}
          className={prose ? "field-prose" : "field-prose field-wraps"}
          rows={1}
          onKeyDown={(event) => !prose && event.key === "Enter" && event.preventDefault()}
          onChange={(event) => write(prose ? event.target.value : event.target.value.replace(/\s*\n\s*/g, " "))}
        />
      ) : (
        <input
          {...shared}
          className="field-line"
          list={offers && `${field.id}-offers`}
          onChange={(event) => write(event.target.value)}
        />
      )}
      {offers && (
        <datalist id={`${field.id}-offers`}>
          {offers.map((offer) => (
            <option key={offer} value={offer} />
          ))}
        </datalist>
      )}
    </Labelled>
  );
}

/** Short texts are quoted in a gesture's words, long ones only named. */
function spoken(text: string): string {
  if (text === "") return "emptied";
  return text.length <= 40 ? `“${text}”` : "written";
}
