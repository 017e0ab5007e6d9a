/** The colours that a workbook names by number; 0 to 7 are those from 8 on once more. A workbook may bring its own. */
const listed =
  '000000 ffffff ff0000 00ff00 0000ff ffff00 ff00ff 00ffff 800000 008000 000080 808000 800080 008080 c0c0c0 808080 ' +
  '9999ff 993366 ffffcc ccffff 660066 ff8080 0066cc ccccff 000080 ff00ff ffff00 00ffff 800080 800000 008080 0000ff ' +
  '00ccff ccffff ccffcc ffff99 99ccff ff99cc cc99ff ffcc99 3366ff 33cccc 99cc00 ffcc00 ff9900 ff6600 666699 969696 ' +
  '003366 339966 003300 333300 993300 993366 333399 333333';

const colours = listed.split(' ').map((digits) => `#${digits}`);

export const indexedColours: readonly string[] = [...colours.slice(0, 8), ...colours];
