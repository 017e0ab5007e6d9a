import { copperFraction } from '../chemistry/copperFraction.js';
import { copperInSalt } from '../chemistry/copperInSalt.js';
import { copperMass } from '../chemistry/copperMass.js';
import { molarMass, type SaltName } from '../chemistry/molarMass.js';
import { saltForCopper } from '../chemistry/saltForCopper.js';
import { parseQuantity } from '../units/parseQuantity.js';
import { copperMgPerLitre, litres, saltGrams } from '../units/quantity.js';
import type { PublishedValue } from './publishedValue.js';

const masses = { key: 'IUPAC1997', at: 'with H, O and S from memory', status: 'derived' } as const;
const worked = { key: 'IUPAC1997', at: 'worked dose', status: 'derived' } as const;
const unsaid = { key: 'IUPAC1997', at: 'a dose printed as CuSO4, hydrate unsaid', status: 'derived' } as const;

/** The salts, and copper as the element in them. */
export const saltValues: readonly PublishedValue[] = [
  {
    check: 'molar mass of CuSO4·5H2O, g/mol',
    printed: '249.677',
    computed: () => molarMass('pentahydrate'),
    source: masses,
  },
  { check: 'molar mass of CuSO4, g/mol', printed: '159.602', computed: () => molarMass('anhydrous'), source: masses },
  {
    check: 'copper fraction of CuSO4·5H2O',
    printed: '0.254513',
    computed: () => copperFraction('pentahydrate'),
    source: masses,
  },
  {
    check: 'copper fraction of CuSO4',
    printed: '0.398153',
    computed: () => copperFraction('anhydrous'),
    source: masses,
  },
  { check: 'copper for 100 L to 0.20 mg/L, mg', printed: '20.0', computed: () => copperIn('100 L'), source: worked },
  {
    check: 'pentahydrate for 100 L to 0.20 mg/L, mg',
    printed: '78.58',
    computed: () => saltIn('100 L', 'pentahydrate'),
    source: worked,
  },
  {
    check: 'anhydrous salt for 100 L to 0.20 mg/L, mg',
    printed: '50.23',
    computed: () => saltIn('100 L', 'anhydrous'),
    source: worked,
  },
  {
    check: 'copper for 50 US gal to 0.20 mg/L, mg',
    printed: '37.854',
    computed: () => copperIn('50 gal'),
    source: worked,
  },
  {
    check: 'pentahydrate for 50 US gal to 0.20 mg/L, mg',
    printed: '148.73',
    computed: () => saltIn('50 gal', 'pentahydrate'),
    source: worked,
  },
  {
    check: 'copper in 0.4 mg/L of "CuSO4", read as anhydrous, mg/L',
    printed: '0.159',
    computed: () => copperInSalt(saltGrams(0.4e-3), 'anhydrous'),
    source: unsaid,
  },
  {
    check: 'copper in 0.4 mg/L of "CuSO4", read as pentahydrate, mg/L',
    printed: '0.102',
    computed: () => copperInSalt(saltGrams(0.4e-3), 'pentahydrate'),
    source: unsaid,
  },
];

function copperIn(volume: string): number | null {
  const parsed = parseQuantity(volume, 'litres', { field: 'volume' });
  return parsed.ok ? copperMass(litres(parsed.value), copperMgPerLitre(0.2)) : null;
}

function saltIn(volume: string, salt: SaltName): number | null {
  const parsed = parseQuantity(volume, 'litres', { field: 'volume' });
  if (!parsed.ok) return null;
  return 1000 * saltForCopper(copperMass(litres(parsed.value), copperMgPerLitre(0.2)), salt);
}
