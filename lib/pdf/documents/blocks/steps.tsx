import { StyleSheet, View } from '@react-pdf/renderer';
import type { Block, StepSize } from '@/lib/papers/paper';
import { COLOUR } from '../../render/paper-colours';
import { TYPE } from '../../render/paper-type';
import { SceneDrawing } from '../../render/scene-drawing';
import { Words } from '../../render/words';
import { STEP_PICTURE } from './sizes';

/** Steps with a drawing each, in letters to be read from across a room. */
export function StepsOnPaper({ block }: { readonly block: Extract<Block, { readonly kind: 'steps' }> }) {
  const { lead, rest } = LETTERS[block.size];
  return (
    <View style={styles.steps}>
      {block.items.map((item, index) => (
        <View key={index} style={styles.step} wrap={false}>
          <SceneDrawing scene={item.picture} width={STEP_PICTURE[block.size]} />
          <View style={styles.words}>
            <Words style={[styles.lead, { fontSize: lead }]}>{`${index + 1}  ${item.lead}`}</Words>
            {item.text === undefined ? null : <Words style={{ fontSize: rest, lineHeight: 1.2 }}>{item.text}</Words>}
          </View>
        </View>
      ))}
    </View>
  );
}

const LETTERS: Readonly<Record<StepSize, { readonly lead: number; readonly rest: number }>> = {
  huge: { lead: TYPE.call, rest: TYPE.subheading },
  large: { lead: TYPE.heading, rest: TYPE.subheading },
  plain: { lead: TYPE.subheading, rest: TYPE.table },
  small: { lead: TYPE.body, rest: TYPE.small },
};

const styles = StyleSheet.create({
  steps: { marginTop: 4, marginBottom: 4 },
  step: { flexDirection: 'row', alignItems: 'center', gap: 12, paddingTop: 1, paddingBottom: 1, borderBottomWidth: 0.75, borderBottomColor: COLOUR.line },
  words: { flex: 1 },
  lead: { fontWeight: 700, lineHeight: 1.15 },
});
