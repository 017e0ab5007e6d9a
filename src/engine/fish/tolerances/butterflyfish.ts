import { toleranceEntries } from '../toleranceEntries.js';

/** Butterflyfish, bannerfish and the moorish idol. */
export const butterflyfish = [
  ...toleranceEntries({ advice: 'caution', reason: 'butterflyfish', source: 'Memory' }, [
    'Butterflyfish, butterfly, butterfly fish / Chaetodontidae, Chaetodon, Hemitaurichthys, Prognathodes',
    'Longnose butterflyfish, longnose butterfly, yellow longnose butterflyfish / Forcipiger, Forcipiger flavissimus, Forcipiger longirostris',
    'Raccoon butterflyfish, raccoon butterfly / Chaetodon lunula',
    'Auriga butterflyfish, threadfin butterflyfish, auriga butterfly / Chaetodon auriga',
    'Pearlscale butterflyfish, pearlscale butterfly / Chaetodon xanthurus',
    "Klein's butterflyfish, kleins butterfly, sunburst butterflyfish / Chaetodon kleinii",
    'Pyramid butterflyfish, pyramid butterfly / Hemitaurichthys polylepis',
    'Bannerfish, banner fish, heniochus, longfin bannerfish, schooling bannerfish, heniochus butterflyfish / Heniochus, Heniochus acuminatus, Heniochus diphreutes',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'poor-eater', source: 'Memory' }, [
    'Copperband butterflyfish, copperband, copperband butterfly, copper band butterfly / Chelmon rostratus, Chelmon',
    'Moorish idol / Zanclus cornutus, Zanclidae',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'coral-eater', source: 'Memory' }, [
    'Coral-eating butterflyfish, coral eating butterfly, corallivore',
    'Ornate butterflyfish, ornate butterfly / Chaetodon ornatissimus',
    "Meyer's butterflyfish, meyeri butterfly / Chaetodon meyeri",
    'Chevron butterflyfish, chevron butterfly / Chaetodon trifascialis',
    'Melon butterflyfish, redfin butterflyfish, oval butterflyfish / Chaetodon trifasciatus, Chaetodon lunulatus',
    'Eight-banded butterflyfish, eight banded butterfly / Chaetodon octofasciatus',
    'Orange-spotted filefish, harlequin filefish / Oxymonacanthus longirostris, Oxymonacanthus',
  ]),
];
