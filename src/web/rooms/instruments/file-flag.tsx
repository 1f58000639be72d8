import type { CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import type { CabinetView } from "../../../server/api.ts";
import "./file-flag.css";
import { fileState, fileStateWords } from "./file-state.ts";

interface FileFlagOptions {
  readonly file: CabinetItemOf<"file">;
  readonly view: Pick<CabinetView, "items" | "files">;
}

/** Whether a file is to be discarded by the person's own limits: which, and by how much. Nothing for one in use. */
export function FileFlag({ file, view }: FileFlagOptions) {
  const { is, says } = fileState(file, view);
  if (is === "open") return null;
  return (
    <div className="file-flag-lines" data-is={is}>
      <strong className="file-flag" data-is={is}>
        {fileStateWords[is]}
      </strong>
      {says.map((line) => (
        <span key={line}>{line}</span>
      ))}
    </div>
  );
}
