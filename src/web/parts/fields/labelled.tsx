import type { ReactNode } from "react";
import type { Field } from "./editing.tsx";
import "./fields.css";

interface LabelledOptions {
  readonly field: Pick<Field, "id" | "fault">;
  readonly label: string;
  /** In a table: the column says what it is, the label is for who can't see it. */
  readonly bare?: boolean | undefined;
  readonly wide?: boolean | undefined;
  readonly children: ReactNode;
}

/** A label over its control, and the fault that the record found in it. */
export const Labelled = ({ field, label, bare = false, wide = false, children }: LabelledOptions) => (
  <div className="field" data-bare={bare} data-wide={wide}>
    <label className={bare ? "unseen" : "field-label"} htmlFor={field.id}>
      {label}
    </label>
    {children}
    {field.fault !== undefined && (
      <p className="field-fault" id={`${field.id}-fault`}>
        {field.fault}
      </p>
    )}
  </div>
);

/** What a control says about its fault. */
export const faultProps = ({ id, fault }: Pick<Field, "id" | "fault">) =>
  fault === undefined ? {} : { "aria-invalid": true, "aria-describedby": `${id}-fault` };
