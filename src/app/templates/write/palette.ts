/** The colours of the templates, few and calm; text on each is readable, also where a printer knows no colours. */
export const palette = {
  ink: '1C2B33',
  quiet: '4A5B64',
  line: 'CFD8DC',
  deep: '1F4E5F',
  heading: '37677A',
  paper: 'FFFFFF',
  inputPaper: 'E6F0FA',
  bandPaper: 'EEF4F6',
  insidePaper: 'D7E9EE',
  lowPaper: 'F2C9A6',
  warnInk: '7A2E0E',
  warnPaper: 'FDF3EC',
  mark: 'B4521E',
} as const;

export type Colour = (typeof palette)[keyof typeof palette];
