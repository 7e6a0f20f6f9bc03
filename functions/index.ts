import type { FunctionSpec } from "../shared/spec/spec";
import { courseLineSpec } from "./courses/courseLine";
import { coursesSpec } from "./courses/courses";
import { topCourseSpec } from "./courses/topCourse";
import { iceBarrierSpec } from "./deck/iceBarrier";
import { underlaymentSpec } from "./deck/underlayment";
import { ventAreaSpec } from "./deck/ventArea";
import { bestStartSpec } from "./layout/bestStart";
import { cutListSpec } from "./layout/cutList";
import { endPiecesSpec } from "./layout/endPieces";
import { layoutSpec } from "./layout/layout";
import { outlineSpec } from "./layout/outline";
import { outlineAreaSpec } from "./layout/outlineArea";
import { panelCountSpec } from "./layout/panelCount";
import { feetSpec } from "./measure/feet";
import { inchesSpec } from "./measure/inches";
import { tapeSpec } from "./measure/tape";
import { changeOrderSpec } from "./money/changeOrder";
import { markupSpec } from "./money/markup";
import { retainageSpec } from "./money/retainage";
import { salesTaxSpec } from "./money/salesTax";
import { sealSpec } from "./money/seal";
import { sellPriceSpec } from "./money/sellPrice";
import { packsSpec } from "./orders/packs";
import { squaresSpec } from "./orders/squares";
import { panelValueSpec } from "./panel/panelValue";
import { versionSpec } from "./about/version";
import { answerCheckSpec } from "./practice/answerCheck";
import { practiceRoofSpec } from "./practice/practiceRoof";
import { edgeFeetSpec } from "./roof/edgeFeet";
import { edgeLengthsSpec } from "./roof/edgeLengths";
import { planeOutlineSpec } from "./roof/planeOutline";
import { roofEdgesSpec } from "./roof/roofEdges";
import { roofPlanesSpec } from "./roof/roofPlanes";
import { anglePitchSpec } from "./slope/anglePitch";
import { bendAngleSpec } from "./slope/bendAngle";
import { faceAngleSpec } from "./slope/faceAngle";
import { hipFactorSpec } from "./slope/hipFactor";
import { hipLengthSpec } from "./slope/hipLength";
import { pitchAngleSpec } from "./slope/pitchAngle";
import { rafterFactorSpec } from "./slope/rafterFactor";
import { rafterLengthSpec } from "./slope/rafterLength";
import { slopeAreaSpec } from "./slope/slopeArea";
import { slopeCheckSpec } from "./slope/slopeCheck";
import { staggerOffsetSpec } from "./stagger/staggerOffset";
import { starterBlankSpec } from "./stagger/starterBlank";
import { starterCoverSpec } from "./stagger/starterCover";
import { starterListSpec } from "./stagger/starterList";
import { starterSetsSpec } from "./stagger/starterSets";
import { chimneyTrimSpec } from "./trim/chimneyTrim";
import { clipCountSpec } from "./trim/clipCount";
import { nailCountSpec } from "./trim/nailCount";
import { nailPoundsSpec } from "./trim/nailPounds";
import { sheetWeightSpec } from "./trim/sheetWeight";
import { thermalMoveSpec } from "./trim/thermalMove";
import { trimCutsSpec } from "./trim/trimCuts";
import { trimFeetSpec } from "./trim/trimFeet";
import { trimPiecesSpec } from "./trim/trimPieces";
import { trimStockSpec } from "./trim/trimStock";

/** Every function, in the order of the concepts. Hosts, help, metadata and tests all derive from this list. */
export const catalog: readonly FunctionSpec[] = [
  feetSpec,
  inchesSpec,
  tapeSpec,
  panelValueSpec,
  pitchAngleSpec,
  anglePitchSpec,
  rafterFactorSpec,
  hipFactorSpec,
  rafterLengthSpec,
  hipLengthSpec,
  slopeAreaSpec,
  slopeCheckSpec,
  bendAngleSpec,
  faceAngleSpec,
  coursesSpec,
  courseLineSpec,
  topCourseSpec,
  staggerOffsetSpec,
  starterCoverSpec,
  starterBlankSpec,
  starterSetsSpec,
  starterListSpec,
  outlineSpec,
  outlineAreaSpec,
  layoutSpec,
  cutListSpec,
  endPiecesSpec,
  panelCountSpec,
  bestStartSpec,
  roofPlanesSpec,
  roofEdgesSpec,
  planeOutlineSpec,
  edgeFeetSpec,
  edgeLengthsSpec,
  trimFeetSpec,
  trimPiecesSpec,
  trimStockSpec,
  trimCutsSpec,
  chimneyTrimSpec,
  clipCountSpec,
  nailCountSpec,
  nailPoundsSpec,
  thermalMoveSpec,
  sheetWeightSpec,
  underlaymentSpec,
  iceBarrierSpec,
  ventAreaSpec,
  squaresSpec,
  packsSpec,
  sellPriceSpec,
  markupSpec,
  salesTaxSpec,
  retainageSpec,
  changeOrderSpec,
  sealSpec,
  practiceRoofSpec,
  answerCheckSpec,
  versionSpec,
];
