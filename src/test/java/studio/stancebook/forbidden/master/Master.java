package studio.stancebook.forbidden.master;

public record Master(String name) {}
