import { useMemo } from "react";
import type { CaseView } from "../../../../server/api.ts";
import { CaseOnBoxContext } from "../../../lightbox/view/case-on-box.ts";
import { LightBoxFrame } from "../light-box-frame.tsx";
import { CanalInSpace } from "./canal-in-space.tsx";
import "./two-view-room.css";

interface TwoViewRoomOptions {
  readonly caseId: string;
  readonly canal?: string;
}

/** The room in the light box where films of one tooth under different angles give a canal's course in space. */
export const TwoViewRoom = ({ caseId, canal }: TwoViewRoomOptions) => (
  <LightBoxFrame caseId={caseId} title="Two views" at="two views">
    {(view, save) => <Canals view={view} measuring={save.is === "saving"} canal={canal} />}
  </LightBoxFrame>
);

interface CanalsOptions {
  readonly view: CaseView;
  readonly measuring: boolean;
  readonly canal: string | undefined;
}

function Canals({ view, measuring, canal }: CanalsOptions) {
  const { caseId, parts } = view;
  const onBox = useMemo(() => ({ caseId, parts }), [caseId, parts]);
  return (
    <CaseOnBoxContext value={onBox}>
      <CanalInSpace view={view} measuring={measuring} canal={canal} />
    </CaseOnBoxContext>
  );
}
