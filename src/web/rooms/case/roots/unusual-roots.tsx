import { TextField } from "../../../parts/fields/text-field.tsx";

interface UnusualRootsOptions {
  /** What is unusual; undefined where nothing is. */
  readonly unusual: string | undefined;
  readonly because: string;
}

/** A form that is unusual for the tooth stays open until a reason stands beside it; nature can, so it is never refused. */
export function UnusualRoots({ unusual, because }: UnusualRootsOptions) {
  const open = unusual !== undefined && because === "";
  return (
    <div className="unusual-roots" data-open={open}>
      {unusual !== undefined && (
        <p>
          {open && (
            <span className="unusual-mark" aria-hidden="true">
              ?
            </span>
          )}
          {unusual} {open && "Give a reason, or change it."}
        </p>
      )}
      <TextField at="unusualBecause" label="Why an unusual form is right" optional prose />
    </div>
  );
}
