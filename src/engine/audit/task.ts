/** One thing to do, with what its words need. */
export type Task =
  | { readonly kind: 'mend'; readonly row: number }
  | { readonly kind: 'test'; readonly by: number; readonly because: TestReason }
  | { readonly kind: 'test fish water' | 'lower and wait' | 'raise slowly' | 'stop copper' }
  | {
      readonly kind: 'dose';
      readonly millilitres: number;
      readonly from: number;
      readonly to: number;
      readonly raising: boolean;
    }
  | { readonly kind: 'no copper' | 'ask first'; readonly fish: string }
  | { readonly kind: 'strength missing' }
  | { readonly kind: 'change'; readonly litres: number; readonly from: number; readonly to: number }
  | { readonly kind: 'next test'; readonly by: number; readonly level: number }
  | { readonly kind: 'days left'; readonly days: number; readonly by: number; readonly held: number }
  | { readonly kind: 'held enough'; readonly held: number; readonly since: number };

export type TestReason =
  | { readonly kind: 'no reading' }
  | { readonly kind: 'too old'; readonly hours: number; readonly limit: number }
  | { readonly kind: 'dosed since' | 'changed since' | 'no one level' };
