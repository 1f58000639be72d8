import { z } from "zod";
import aquilinoCaplan2002 from "../../../../data/aquilino-caplan-2002/source.json" with { type: "json" };
import asgary2015 from "../../../../data/asgary-2015/source.json" with { type: "json" };
import ather2022 from "../../../../data/ather-2022/source.json" with { type: "json" };
import baaij2023 from "../../../../data/baaij-2023/source.json" with { type: "json" };
import barone2010 from "../../../../data/barone-2010/source.json" with { type: "json" };
import bjorndal2010 from "../../../../data/bjorndal-2010/source.json" with { type: "json" };
import bjorndal2017 from "../../../../data/bjorndal-2017/source.json" with { type: "json" };
import cheungChan2003 from "../../../../data/cheung-chan-2003/source.json" with { type: "json" };
import deChevigny2008Initial from "../../../../data/de-chevigny-2008-initial/source.json" with { type: "json" };
import deChevigny2008Retreatment from "../../../../data/de-chevigny-2008-retreatment/source.json" with { type: "json" };
import elmsmari2019 from "../../../../data/elmsmari-2019/source.json" with { type: "json" };
import ese2019DeepCaries from "../../../../data/ese-2019-deep-caries/source.json" with { type: "json" };
import farzaneh2004 from "../../../../data/farzaneh-2004/source.json" with { type: "json" };
import fuks1987 from "../../../../data/fuks-1987/source.json" with { type: "json" };
import gorni2016 from "../../../../data/gorni-2016/source.json" with { type: "json" };
import gorni2022 from "../../../../data/gorni-2022/source.json" with { type: "json" };
import gorniGagliani2004 from "../../../../data/gorni-gagliani-2004/source.json" with { type: "json" };
import grossmannSadan2005 from "../../../../data/grossmann-sadan-2005/source.json" with { type: "json" };
import hjalmarsson2016 from "../../../../data/hjalmarsson-2016/source.json" with { type: "json" };
import javed2023 from "../../../../data/javed-2023/source.json" with { type: "json" };
import jotkowitzSamet2010 from "../../../../data/jotkowitz-samet-2010/source.json" with { type: "json" };
import juloski2012 from "../../../../data/juloski-2012/source.json" with { type: "json" };
import jung2008 from "../../../../data/jung-2008/source.json" with { type: "json" };
import lopezValverde2023 from "../../../../data/lopez-valverde-2023/source.json" with { type: "json" };
import mainkar2017 from "../../../../data/mainkar-2017/source.json" with { type: "json" };
import martins2025 from "../../../../data/martins-2025/source.json" with { type: "json" };
import mente2010 from "../../../../data/mente-2010/source.json" with { type: "json" };
import mente2013 from "../../../../data/mente-2013/source.json" with { type: "json" };
import mente2014 from "../../../../data/mente-2014/source.json" with { type: "json" };
import mergoni2022 from "../../../../data/mergoni-2022/source.json" with { type: "json" };
import ng2011Health from "../../../../data/ng-2011-health/source.json" with { type: "json" };
import ng2011Survival from "../../../../data/ng-2011-survival/source.json" with { type: "json" };
import panitvisai2010 from "../../../../data/panitvisai-2010/source.json" with { type: "json" };
import pinto2020 from "../../../../data/pinto-2020/source.json" with { type: "json" };
import pjeturssonLang2008 from "../../../../data/pjetursson-lang-2008/source.json" with { type: "json" };
import sadaf2020 from "../../../../data/sadaf-2020/source.json" with { type: "json" };
import salehrabiRotstein2004 from "../../../../data/salehrabi-rotstein-2004/source.json" with { type: "json" };
import setzer2010 from "../../../../data/setzer-2010/source.json" with { type: "json" };
import siew2015 from "../../../../data/siew-2015/source.json" with { type: "json" };
import sjogren1990 from "../../../../data/sjogren-1990/source.json" with { type: "json" };
import spili2005 from "../../../../data/spili-2005/source.json" with { type: "json" };
import torabinejad2009 from "../../../../data/torabinejad-2009/source.json" with { type: "json" };
import torabinejad2015 from "../../../../data/torabinejad-2015/source.json" with { type: "json" };
import torabinejad2017 from "../../../../data/torabinejad-2017/source.json" with { type: "json" };
import tsesis2013 from "../../../../data/tsesis-2013/source.json" with { type: "json" };
import vanNieuwenhuysen1994 from "../../../../data/van-nieuwenhuysen-1994/source.json" with { type: "json" };
import { conditionSchema } from "./condition.ts";
import { planWays } from "./plan-ways.ts";

const share = z.number().min(0).max(1);
const mark = z.enum(["seen", "memory"]).optional();
const ends = z.tuple([z.number().positive(), z.number().positive()]);
const ways = z.array(z.enum(planWays)).min(1);

const outcome = z.strictObject({
  ...{
    id: z.string(),
    ways,
    what: z.string(),
    kind: z.enum(["healing", "notWorse", "retention", "pulp", "replacement"]),
  },
  ...{ events: z.int().optional(), n: z.int().optional(), proportion: share.optional() },
  implied: z.literal(true).optional().describe("The count follows from the printed share."),
  interval: z.tuple([share, share]).optional(),
  ...{ definition: z.enum(["strict", "loose", "survival", "asPrinted"]), definitionSays: z.string() },
  imaging: z.enum(["film", "cbct", "none", "notStated"]),
  unit: z.enum(["tooth", "root", "patient", "implant", "bridge", "notStated"]),
  ...{ design: z.string(), followUp: z.string(), group: z.string(), note: z.string().optional(), mark },
  recall: z.strictObject({ examined: z.int(), of: z.int() }).optional(),
  when: conditionSchema,
  onlyWhen: conditionSchema.optional(),
  plain: z.strictObject({ things: z.string(), had: z.string(), later: z.string() }),
});
const factor = z.strictObject({
  ...{ id: z.string(), ways, says: z.string(), when: conditionSchema, appliesTo: z.string() },
  ratio: z.number().positive().optional(),
  ratioIs: z.enum(["odds ratio", "hazard ratio", "risk ratio", "none printed"]),
  ...{ interval: ends.optional(), adjusted: z.boolean().optional() },
  direction: z.enum(["lowers", "raises", "either"]),
  withoutFactor: share.optional().describe("The printed share of the same series without the factor."),
  withFactor: share.optional(),
  ...{ note: z.string().optional(), mark },
});
/** A published series as a source holds it. */
export type OutcomeRow = z.infer<typeof outcome>;
/** A published factor as a source holds it. */
export type FactorRow = z.infer<typeof factor>;

const sourceFile = z.looseObject({
  ...{ id: z.string(), reference: z.string(), verification: z.enum(["seen", "memory"]) },
  outcomes: z.array(outcome).default([]),
  factors: z.array(factor).default([]),
});

/** Every published source of a plan with the series and factors that it gives. */
export const planSources = z
  .array(sourceFile)
  .parse([
    aquilinoCaplan2002,
    asgary2015,
    ather2022,
    baaij2023,
    barone2010,
    bjorndal2010,
    bjorndal2017,
    cheungChan2003,
    deChevigny2008Initial,
    deChevigny2008Retreatment,
    elmsmari2019,
    ese2019DeepCaries,
    farzaneh2004,
    fuks1987,
    gorni2016,
    gorni2022,
    gorniGagliani2004,
    grossmannSadan2005,
    hjalmarsson2016,
    javed2023,
    jotkowitzSamet2010,
    juloski2012,
    jung2008,
    lopezValverde2023,
    mainkar2017,
    martins2025,
    mente2010,
    mente2013,
    mente2014,
    mergoni2022,
    ng2011Health,
    ng2011Survival,
    panitvisai2010,
    pinto2020,
    pjeturssonLang2008,
    sadaf2020,
    salehrabiRotstein2004,
    setzer2010,
    siew2015,
    sjogren1990,
    spili2005,
    torabinejad2009,
    torabinejad2015,
    torabinejad2017,
    tsesis2013,
    vanNieuwenhuysen1994,
  ]);
