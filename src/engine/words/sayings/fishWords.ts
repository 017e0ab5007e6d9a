/** Fish by their trade names, as the source of a regular expression. */
export const fish =
  '(?:(?:[a-z]+ )?(?:clown|tang|wrasse|angel|butterfly|damsel|cardinal|trigger|puffer|file|rabbit|lion|jaw|dart|fire|box|cow|pipe|bat|squirrel|soldier|parrot|surgeon|banner|hog|hawk|cat|trumpet|pine|anthia)(?:fish(?:es)?|s|es)?|' +
  '(?:[a-z]+ )?(?:gob(?:y|ies)|blenn(?:y|ies)|butterflies|butters|chromis|anthias|basslets?|grammas?|dott(?:y|ie)backs?|dott(?:y|ies)|pseudochromis|fox(?:face|faces)|eels?|morays?|groupers?|mandarins?|dragonets?|scooters?|moll(?:y|ies)|seahorses?|sweetlips|idols?|sharks?|rays?|assessors?|bristletooths?|sailfins?|ocellaris|perculas?|trigs?|hippos?|yellows|pbts?|copperbands?|chalk bass|bass|snappers?|heniochus|bristles|rabbits|leopard wrasse)|' +
  '(?:[a-z]+ )?(?:zebrasoma|acanthurus|centropyge|synchiropus|hippocampus|amphiprion|pterapogon|pseudanthias|ctenochaetus|halichoeres|cirrhilabrus|paracheilinus)(?: [a-z]+)?|' +
  'bamboo cats?|epaulette(?: pup)?|fish(?:e?s)?|pts?\\b|(?:clown|mandarin|goby|angel) (?:pr|pair)|pair)';

export const invertebrate =
  '(?:(?:cleaner|peppermint|fire|coral banded|mantis|pistol|ghost|sexy|camel) shrimps?|shrimps?|lysmata|snails?|nassarius|gastropods?|turbos?|cerith?s?|limpets?|crabs?|hermits?|brittle stars?|sea stars?|starfish|urchins?|anemones?|corals?|clams?|mussels?|oysters?(?! shell)|octopus(?:es)?|nudibranchs?|sea slugs?|sea hares?|feather dusters?(?: worms?)?|coco worms?|bristle ?worms?|inverts?|invertebrates?|zoas?|chitons?|lobsters?|sponges?(?= (?:animal|growing))|abalones?|conchs?|amphipods?|mysids alive)';
const amount =
  '(?:\\d+|a|an|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|another|half a dozen|a dozen|dozen|a couple(?: of)?|several|some)';

/** A number of something, in digits or in letters. */
export const count = amount;
