/** So long without signs and deaths before fish go anywhere. [Practice, last seven days before a transfer] [days] */
export const quietDays = 7;
