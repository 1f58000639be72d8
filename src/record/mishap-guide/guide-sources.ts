import birk2016 from "../../../data/birk-2016/source.json" with { type: "json" };
import dentalCouncil2016 from "../../../data/dental-council-2016/source.json" with { type: "json" };
import farook2014 from "../../../data/farook-2014/source.json" with { type: "json" };
import gorni2022 from "../../../data/gorni-2022/source.json" with { type: "json" };
import gorniGagliani2004 from "../../../data/gorni-gagliani-2004/source.json" with { type: "json" };
import guivarch2017 from "../../../data/guivarch-2017/source.json" with { type: "json" };
import hao2023 from "../../../data/hao-2023/source.json" with { type: "json" };
import hulsmannHahn2000 from "../../../data/hulsmann-hahn-2000/source.json" with { type: "json" };
import jafarzadehAbbott2007 from "../../../data/jafarzadeh-abbott-2007/source.json" with { type: "json" };
import jevon2019 from "../../../data/jevon-2019/source.json" with { type: "json" };
import madarati2013Management from "../../../data/madarati-2013-management/source.json" with { type: "json" };
import naderian2022 from "../../../data/naderian-2022/source.json" with { type: "json" };
import renton2017 from "../../../data/renton-2017/source.json" with { type: "json" };
import rosen2017 from "../../../data/rosen-2017/source.json" with { type: "json" };
import spili2005 from "../../../data/spili-2005/source.json" with { type: "json" };
import tsesisFuss2006 from "../../../data/tsesis-fuss-2006/source.json" with { type: "json" };
import yadav2015 from "../../../data/yadav-2015/source.json" with { type: "json" };
import { sourcesOf } from "../../core/basis.ts";

/** The published sources of the steps after a mishap, each with its mark. @source data/mishap-steps/steps.json */
export const guideSources = sourcesOf([
  ...[birk2016, dentalCouncil2016, farook2014, gorni2022, gorniGagliani2004, guivarch2017, hao2023, hulsmannHahn2000],
  ...[
    jafarzadehAbbott2007,
    jevon2019,
    madarati2013Management,
    naderian2022,
    renton2017,
    rosen2017,
    spili2005,
    tsesisFuss2006,
  ],
  yadav2015,
]);
