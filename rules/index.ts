/** All rules, in the order in which they are listed. */

import { abbreviationTwice } from './abbreviation-twice.ts';
import { announcedLate } from './announced-late.ts';
import { ballsAndTotal } from './balls-and-total.ts';
import { bindOffSteps } from './bind-off-steps.ts';
import { blockingMeasures } from './blocking-measures.ts';
import { bodyAndEase } from './body-and-ease.ts';
import { buttonNumbers } from './button-numbers.ts';
import { buttonholeRow } from './buttonhole-row.ts';
import { cableDefinition } from './cable-definition.ts';
import { cableOnRope } from './cable-on-rope.ts';
import { cableSide } from './cable-side.ts';
import { castOnGirth } from './cast-on-girth.ts';
import { changeMismatch } from './change-mismatch.ts';
import { childSafety } from './child-safety.ts';
import { coloursListed } from './colours-listed.ts';
import { constructionNote } from './construction-note.ts';
import { countMismatch } from './count-mismatch.ts';
import { countSeries } from './count-series.ts';
import { dashInRow } from './dash-in-row.ts';
import { decreaseColumns } from './decrease-columns.ts';
import { definitionEffect } from './definition-effect.ts';
import { doubleYarnOver } from './double-yarn-over.ts';
import { doubledWords } from './doubled-words.ts';
import { edgeSymmetry } from './edge-symmetry.ts';
import { endingRowLength } from './ending-row-length.ts';
import { endingSide } from './ending-side.ts';
import { gapMissing } from './gap-missing.ts';
import { gaugeComplete } from './gauge-complete.ts';
import { gaugeInTwoUnits } from './gauge-in-two-units.ts';
import { gaugeShape } from './gauge-shape.ts';
import { heldStitches } from './held-stitches.ts';
import { holderNumbers } from './holder-numbers.ts';
import { laceBalance } from './lace-balance.ts';
import { lengthsAddUp } from './lengths-add-up.ts';
import { markerInStitch } from './marker-in-stitch.ts';
import { markerNotSlipped } from './marker-not-slipped.ts';
import { markerNumbers } from './marker-numbers.ts';
import { markerPlace } from './marker-place.ts';
import { methodLeftOpen } from './method-left-open.ts';
import { mirroredShaping } from './mirrored-shaping.ts';
import { mixedForms } from './mixed-forms.ts';
import { mixedTerms } from './mixed-terms.ts';
import { multipleMismatch } from './multiple-mismatch.ts';
import { nearHeat } from './near-heat.ts';
import { needleLength } from './needle-length.ts';
import { needleNotChanged } from './needle-not-changed.ts';
import { needleSizesRule } from './needle-sizes.ts';
import { needleUse } from './needle-use.ts';
import { needlesSum } from './needles-sum.ts';
import { notRead } from './not-read.ts';
import { nothingToPass } from './nothing-to-pass.ts';
import { nothingToWork } from './nothing-to-work.ts';
import { oneReadingFits } from './one-reading-fits.ts';
import { patternNotRestored } from './pattern-not-restored.ts';
import { patternNote } from './pattern-note.ts';
import { pickedUpAlike } from './picked-up-alike.ts';
import { pictureWords } from './picture-words.ts';
import { referenceMissing } from './reference-missing.ts';
import { repeatDoesNotFit } from './repeat-does-not-fit.ts';
import { repeatUnclosed } from './repeat-unclosed.ts';
import { repeatWidth } from './repeat-width.ts';
import { ribColumns } from './rib-columns.ts';
import { roundAfterTurns } from './round-after-turns.ts';
import { rowMissing } from './row-missing.ts';
import { rowNumbers } from './row-numbers.ts';
import { rowRange } from './row-range.ts';
import { rowsAndGauge } from './rows-and-gauge.ts';
import { rowsOfPattern } from './rows-of-pattern.ts';
import { rowsOfPieces } from './rows-of-pieces.ts';
import { rowsStated } from './rows-stated.ts';
import type { Rule } from './rule.ts';
import { shapingOpen } from './shaping-open.ts';
import { sideMismatch } from './side-mismatch.ts';
import { sizeListLength } from './size-list-length.ts';
import { sizeListsSpaced } from './size-lists-spaced.ts';
import { sizePaths } from './size-paths.ts';
import { sizesGrow } from './sizes-grow.ts';
import { sizesNamed } from './sizes-named.ts';
import { sizesWithoutMeasures } from './sizes-without-measures.ts';
import { staleStet } from './stale-stet.ts';
import { stitchesLeftOpen } from './stitches-left-open.ts';
import { stitchesLeftOver } from './stitches-left-over.ts';
import { stitchesNamed } from './stitches-named.ts';
import { strayMarker } from './stray-marker.ts';
import { tableAgrees } from './table-agrees.ts';
import { targetMissed } from './target-missed.ts';
import { templateLeftovers } from './template-leftovers.ts';
import { tooFewStitches } from './too-few-stitches.ts';
import { toolNotListed } from './tool-not-listed.ts';
import { toolNotUsed } from './tool-not-used.ts';
import { turnPlaces } from './turn-places.ts';
import { turnsLeftOpen } from './turns-left-open.ts';
import { twoNames } from './two-names.ts';
import { twoReadings } from './two-readings.ts';
import { unexplainedAbbreviation } from './unexplained-abbreviation.ts';
import { unitsAgree } from './units-agree.ts';
import { unusedAbbreviation } from './unused-abbreviation.ts';
import { unworkedStitches } from './unworked-stitches.ts';
import { widthAndGauge } from './width-and-gauge.ts';
import { wrongSideDecrease } from './wrong-side-decrease.ts';
import { yarnAllowance } from './yarn-allowance.ts';
import { yarnAndGauge } from './yarn-and-gauge.ts';
import { yarnDescribed } from './yarn-described.ts';
import { yarnEstimate } from './yarn-estimate.ts';
import { yarnOverAtEdge } from './yarn-over-at-edge.ts';
import { yarnOverAtMarker } from './yarn-over-at-marker.ts';
import { yarnOversTogether } from './yarn-overs-together.ts';

export const rules: readonly Rule[] = [
  countMismatch,
  changeMismatch,
  stitchesNamed,
  tooFewStitches,
  stitchesLeftOver,
  repeatDoesNotFit,
  multipleMismatch,
  patternNotRestored,
  sizeListLength,
  sideMismatch,
  endingSide,
  rowNumbers,
  rowMissing,
  rowRange,
  rowsStated,
  rowsOfPattern,
  referenceMissing,
  targetMissed,
  heldStitches,
  stitchesLeftOpen,
  needlesSum,
  unworkedStitches,
  turnPlaces,
  markerPlace,
  markerInStitch,
  markerNotSlipped,
  gapMissing,
  roundAfterTurns,
  turnsLeftOpen,
  nothingToPass,
  nothingToWork,
  twoReadings,
  oneReadingFits,
  laceBalance,
  repeatWidth,
  patternNote,
  repeatUnclosed,
  doubleYarnOver,
  yarnOversTogether,
  yarnOverAtEdge,
  yarnOverAtMarker,
  wrongSideDecrease,
  decreaseColumns,
  cableDefinition,
  definitionEffect,
  cableSide,
  cableOnRope,
  mirroredShaping,
  edgeSymmetry,
  ribColumns,
  shapingOpen,
  sizePaths,
  strayMarker,
  countSeries,
  notRead,
  needleSizesRule,
  unitsAgree,
  unexplainedAbbreviation,
  unusedAbbreviation,
  widthAndGauge,
  toolNotListed,
  toolNotUsed,
  buttonNumbers,
  markerNumbers,
  needleUse,
  needleNotChanged,
  lengthsAddUp,
  blockingMeasures,
  childSafety,
  sizesWithoutMeasures,
  gaugeComplete,
  gaugeInTwoUnits,
  yarnAndGauge,
  ballsAndTotal,
  bodyAndEase,
  sizesGrow,
  tableAgrees,
  coloursListed,
  mixedTerms,
  mixedForms,
  rowsAndGauge,
  gaugeShape,
  needleLength,
  yarnEstimate,
  yarnDescribed,
  doubledWords,
  holderNumbers,
  templateLeftovers,
  abbreviationTwice,
  announcedLate,
  castOnGirth,
  sizesNamed,
  nearHeat,
  yarnAllowance,
  bindOffSteps,
  pickedUpAlike,
  sizeListsSpaced,
  pictureWords,
  buttonholeRow,
  dashInRow,
  rowsOfPieces,
  endingRowLength,
  constructionNote,
  twoNames,
  methodLeftOpen,
  staleStet,
];
