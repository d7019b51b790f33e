package cornerbook.app.calibration.fleet;

import java.util.random.RandomGenerator;

/** Gives the simulator, in the place of chance, numbers that were chosen: its own code says what car they make. */
final class OracleLatents implements RandomGenerator {
    private final double[] normals;
    private final double[] uniforms;
    private int normal;
    private int uniform;

    /**
     * What will be handed out.
     *
     * @param normals in the order in which they are asked for
     * @param uniforms the same of those from 0 to 1
     */
    OracleLatents(double[] normals, double... uniforms) {
        this.normals = normals.clone();
        this.uniforms = uniforms.clone();
    }

    @Override
    public double nextGaussian() {
        return normals[normal++];
    }

    @Override
    public double nextDouble() {
        return uniforms[uniform++];
    }

    @Override
    public int nextInt(int bound) {
        return (int) (uniforms[uniform++] * bound);
    }

    @Override
    public long nextLong() {
        throw new IllegalStateException("nothing but uniform and normal numbers was chosen");
    }
}
