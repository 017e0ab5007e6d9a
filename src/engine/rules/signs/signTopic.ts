/**
 * What a sign, or a word that the fish is well, is about. listless: too little activity; acting: odd activity or a place
 * where a sick fish stays. 'feeding well' is said of a well fish only. all: the fish as a whole.
 */
export type SignTopic =
  'feeding' | 'feeding well' | 'breathing' | 'listless' | 'acting' | 'rubbing' | 'looks' | 'deaths' | 'all';
