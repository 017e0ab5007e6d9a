/** Of the widest digit of a new workbook's usual letters, in which widths of columns count. [px] */
export const digitWidth = 8;
