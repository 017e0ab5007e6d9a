/** Says how many rows were written below the table, where no formula looks; empty where none were. */
export function rowsBelowTable(column: string): string {
  const below = `COUNT(Log!$${column}$2:$${column}$5000)-COUNT(Log[Date and time])`;
  return `=IF(${below}>0,${below}&" rows stand below the table Log and are not read: pull its lower right corner down","all rows with a time are read: "&COUNT(Log[Date and time]))`;
}
