import { askedBy } from '../bench/asked.ts';
import {
  coldResistance,
  filamentExponent,
  fuseResistance,
  fuseSpread,
  heaterSpread,
  hotResistance,
  hotToCold,
  ratedHeaterResistance,
  ratedSpread,
  usualTolerance,
  wireBasis,
} from '../circuit/circuit.ts';
import type { PartModel } from '../circuit/circuit.ts';
import { formatQuantity, formatSpan } from '../quantity/quantity.ts';
import type { Span } from '../quantity/quantity.ts';
import type { Procedure } from '../model/procedure.ts';

/** What a resistance rests on beyond the values that the file states. */
export interface Basis {
  readonly value: string;
  readonly source: string;
}

/** null: nothing, it is stated as it is. */
export function basisOf(model: PartModel): Basis | null {
  switch (model.kind) {
    case 'stated':
    case 'track':
      return null;
    case 'copper-wire':
      return { value: 'annealed copper, 0.393 % per kelvin', source: wireSources[wireBasis(model.wire)] };
    case 'copper-coil':
      return { value: 'copper winding, in proportion to 234.5 °C + t', source: 'IEC 60034-1' };
    case 'preferred': {
      const { least, most } = model.resistance;
      if (least < most) return null;
      const tolerance = `± ${percent(usualTolerance(model.series))}`;
      return { value: `${tolerance}, usual for ${model.series}`, source: 'IEC 60063' };
    }
    case 'lamp-rating': {
      const cold = formatSpan(toThreeDigits(coldResistance(model.volts, model.watts)), 'resistance');
      const hot = formatQuantity(
        Number(hotResistance(model.volts, model.watts).toPrecision(3)),
        'resistance',
      );
      return {
        value: `estimated ${cold} cold, 1/${hotToCold.most} to 1/${hotToCold.least} of its ${hot} hot`,
        source: 'published filaments, 8.8 and 13.7 times',
      };
    }
    case 'heater-rating': {
      const ohms = formatSpan(toThreeDigits(ratedHeaterResistance(model.volts, model.watts)), 'resistance');
      return {
        value: `${ohms} cold and hot, volts squared by watts within ${percent(heaterSpread)}`,
        source: 'common practice, no source',
      };
    }
    case 'fuse-rating': {
      const ohms = formatSpan(toThreeDigits(fuseResistance(model.amperes)), 'resistance');
      return {
        value: `estimated ${ohms}, ${fuseSpread.least} to ${fuseSpread.most} times that of usual cold blade fuses`,
        source: 'as makers publish it, no standard',
      };
    }
    case 'thermistor':
      return { value: 'falls with temperature along its curve', source: 'stated in this file' };
    case 'platinum':
      return { value: `platinum, class ${model.class}`, source: 'IEC 60751' };
  }
}

/** What the resistance under power rests on, of voltages, where that is another than the one an ohmmeter shows. */
export function hotBasisOf(model: PartModel): Basis | null {
  if (model.kind !== 'lamp-rating') return null;
  const hot = formatQuantity(Number(hotResistance(model.volts, model.watts).toPrecision(3)), 'resistance');
  const { least, most } = filamentExponent;
  return {
    value: `${hot} ± ${percent(ratedSpread)} hot at ${formatQuantity(model.volts, 'voltage')}, rising with the power ${least} to ${most} of the voltage`,
    source: 'published rerating formulas of lamps',
  };
}

/** `underPower`: with what a part has then. null: it is stated as it is. */
export function basisInWords(model: PartModel, underPower: boolean): string | null {
  const bases = [basisOf(model), underPower ? hotBasisOf(model) : null].filter((basis) => basis !== null);
  return bases.length === 0 ? null : bases.map(({ value, source }) => `${value}; ${source}`).join('; ');
}

/** Whether a step of a procedure measures what parts have under power. */
export function measuresVoltage({ steps }: Procedure): boolean {
  return steps.some((step) => {
    const asked = askedBy(step);
    return asked?.of === 'points' && asked.step.quantity === 'voltage';
  });
}

const wireSources = {
  listed: 'IEC 60028; at most as IEC 60228 class 5, plain or coated wires',
  unlisted: 'IEC 60028; 5 % less to 20 % more, since IEC 60228 does not list this size',
  gauge: 'IEC 60028, ASTM B258; 15 % less to 10 % more for its strands',
} as const;

function percent(part: number): string {
  return `${Number((100 * part).toPrecision(3))} %`;
}

function toThreeDigits({ least, nominal, most }: Span): Span {
  const three = (value: number): number => Number(value.toPrecision(3));
  return { least: three(least), nominal: three(nominal), most: three(most) };
}
