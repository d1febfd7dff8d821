package boilwright.dashboard.model;

public record MomentState(double s) {}
