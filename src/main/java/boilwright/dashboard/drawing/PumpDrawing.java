package boilwright.dashboard.drawing;

public final class PumpDrawing extends javafx.scene.layout.Region {
    public void setRig(boilwright.rig.Rig rig, boilwright.fluid.WorkingFluid fluid) {}

    public void setMoment(boilwright.dashboard.model.MomentState moment) {}

    public void setGuesses(java.util.Set<String> paths) {}
}
