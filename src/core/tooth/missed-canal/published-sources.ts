import alHaddad2026 from "../../../../data/al-haddad-2026/source.json" with { type: "json" };
import alMaswary2023 from "../../../../data/al-maswary-2023/source.json" with { type: "json" };
import alves2018 from "../../../../data/alves-2018/source.json" with { type: "json" };
import aung2021 from "../../../../data/aung-2021/source.json" with { type: "json" };
import betancourt2016 from "../../../../data/betancourt-2016/source.json" with { type: "json" };
import cShapeKorea2021 from "../../../../data/c-shape-korea-2021/source.json" with { type: "json" };
import cShapeTurkey2021 from "../../../../data/c-shape-turkey-2021/source.json" with { type: "json" };
import demirbuga2013 from "../../../../data/demirbuga-2013/source.json" with { type: "json" };
import halilSectioned from "../../../../data/halil-sectioned/source.json" with { type: "json" };
import hatipoglu2023Middle from "../../../../data/hatipoglu-2023-middle/source.json" with { type: "json" };
import hatipoglu2023Radix from "../../../../data/hatipoglu-2023-radix/source.json" with { type: "json" };
import kelesKeskin2017 from "../../../../data/keles-keskin-2017/source.json" with { type: "json" };
import kim2018 from "../../../../data/kim-2018/source.json" with { type: "json" };
import kim2020 from "../../../../data/kim-2020/source.json" with { type: "json" };
import leonLopez2025 from "../../../../data/leon-lopez-2025/source.json" with { type: "json" };
import martins2018 from "../../../../data/martins-2018/source.json" with { type: "json" };
import martins2021 from "../../../../data/martins-2021/source.json" with { type: "json" };
import martins2022 from "../../../../data/martins-2022/source.json" with { type: "json" };
import martins2023 from "../../../../data/martins-2023/source.json" with { type: "json" };
import mb2Review2020 from "../../../../data/mb2-review-2020/source.json" with { type: "json" };
import park2013 from "../../../../data/park-2013/source.json" with { type: "json" };
import rodrigues2016 from "../../../../data/rodrigues-2016/source.json" with { type: "json" };
import schafer2009 from "../../../../data/schafer-2009/source.json" with { type: "json" };
import secondCanalMethods2018 from "../../../../data/second-canal-methods-2018/source.json" with { type: "json" };
import senan2020 from "../../../../data/senan-2020/source.json" with { type: "json" };
import strmsek2019 from "../../../../data/strmsek-2019/source.json" with { type: "json" };
import sun2016 from "../../../../data/sun-2016/source.json" with { type: "json" };
import tu2009 from "../../../../data/tu-2009/source.json" with { type: "json" };
import vonZuben2017 from "../../../../data/von-zuben-2017/source.json" with { type: "json" };
import westChina2020 from "../../../../data/west-china-2020/source.json" with { type: "json" };
import xu2022 from "../../../../data/xu-2022/source.json" with { type: "json" };
import zhang2015 from "../../../../data/zhang-2015/source.json" with { type: "json" };

/** Every published source of hidden canals as its folder of data/ holds it, in the order in which sources are named. */
export const publishedSources: readonly unknown[] = [
  martins2018,
  xu2022,
  kim2020,
  betancourt2016,
  alves2018,
  mb2Review2020,
  martins2022,
  hatipoglu2023Radix,
  park2013,
  kim2018,
  tu2009,
  zhang2015,
  westChina2020,
  schafer2009,
  strmsek2019,
  demirbuga2013,
  senan2020,
  rodrigues2016,
  alHaddad2026,
  alMaswary2023,
  hatipoglu2023Middle,
  vonZuben2017,
  cShapeKorea2021,
  cShapeTurkey2021,
  martins2021,
  martins2023,
  aung2021,
  secondCanalMethods2018,
  halilSectioned,
  sun2016,
  kelesKeskin2017,
  leonLopez2025,
];
