/** The cautions that stay in view whatever is selected. */
export const cautionLine =
  'Copper is a poison to fish and to people: gloves and goggles, away from children and food. ' +
  'Never with invertebrates, never with fish meant for eating. Check every computed dose by a test before the next. ' +
  'Dispose of treated water as local rules require. An aquatic veterinarian decides; the law and the label come before anything computed here.';
