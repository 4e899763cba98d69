@org.springframework.modulith.ApplicationModule(allowedDependencies = {})
package studio.stancebook.forbidden.pupil;
