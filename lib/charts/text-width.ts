import { TEXT_SIZE } from './scene';

/** The characters whose widths follow, the printable ones of ASCII first. */
const CHARACTERS = `${Array.from({ length: 95 }, (_, index) => String.fromCharCode(32 + index)).join('')}–’×·³²°−`;

/**
 * Advance widths of Atkinson Hyperlegible Next in thousandths of its size, in the order of CHARACTERS,
 * measured from the font file 5.3.0. Digits have one width where they stand in columns; these are their own.
 */
const REGULAR = [
  280, 286, 301, 651, 592, 919, 731, 160, 299, 299, 485, 606, 210, 362, 210, 387, 648, 407, 548, 576, 614, 588,
  598, 510, 615, 595, 210, 210, 553, 628, 553, 480, 778, 626, 613, 645, 669, 569, 552, 694, 694, 392, 512, 631,
  541, 824, 693, 714, 592, 724, 614, 592, 558, 690, 593, 856, 623, 575, 607, 317, 387, 344, 552, 372, 243, 525,
  566, 485, 564, 538, 314, 558, 550, 252, 245, 492, 262, 845, 550, 548, 566, 574, 349, 471, 326, 540, 461, 684,
  481, 449, 460, 344, 237, 344, 555, 504, 236, 532, 240, 383, 382, 352, 606,
];
const BOLD = [
  313, 303, 390, 765, 610, 969, 725, 210, 335, 335, 485, 595, 271, 373, 272, 440, 659, 440, 579, 600, 624, 608,
  626, 537, 624, 571, 272, 272, 569, 612, 569, 547, 781, 678, 643, 658, 689, 597, 566, 718, 701, 425, 561, 664,
  552, 858, 717, 747, 629, 757, 650, 610, 607, 686, 644, 886, 685, 650, 618, 340, 440, 344, 582, 400, 288, 552,
  596, 510, 596, 563, 365, 593, 571, 300, 259, 555, 318, 882, 571, 576, 596, 599, 376, 508, 376, 567, 530, 740,
  540, 521, 506, 381, 254, 381, 537, 501, 269, 536, 294, 407, 402, 394, 595,
];
/** For a character that is not in the list: wide, so that nothing runs over. */
const UNKNOWN = 800;
/** Digits of equal width take the width of the widest. */
const DIGIT = { regular: 648, bold: 659 };

/** Width of a text in a chart, px; a little more than it takes, never less. */
export function textWidth(words: string, strong = false): number {
  const widths = strong ? BOLD : REGULAR;
  let sum = 0;
  for (const character of words) {
    if (character >= '0' && character <= '9') sum += strong ? DIGIT.bold : DIGIT.regular;
    else sum += widths[CHARACTERS.indexOf(character)] ?? UNKNOWN;
  }
  return (sum / 1000) * TEXT_SIZE;
}

/**
 * Breaks a text into lines no wider than allowed; a single word that is wider stays whole.
 * @param most lines; what is left over ends the last one with three dots
 */
export function wrap(words: string, width: number, most = 3, strong = false): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of words.split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (current !== '' && textWidth(longer, strong) > width) {
      lines.push(current);
      current = word;
    } else current = longer;
  }
  lines.push(current);
  return lines.length <= most ? lines : [...lines.slice(0, most - 1), shortened(lines.slice(most - 1).join(' '), width, strong)];
}

function shortened(words: string, width: number, strong: boolean): string {
  let kept = words;
  while (kept.includes(' ') && textWidth(`${kept} ...`, strong) > width) kept = kept.slice(0, kept.lastIndexOf(' '));
  return `${kept} ...`;
}
