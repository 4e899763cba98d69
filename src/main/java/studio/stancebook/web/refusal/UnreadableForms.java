package studio.stancebook.web.refusal;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import studio.stancebook.edge.BodyRefused;

/** Refuses a form that could not be read when a filter asked for one of its fields, as the check of its token does. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 1)
class UnreadableForms extends OncePerRequestFilter {

    /** Where the error page finds what to tell. */
    static final String PROBLEM = UnreadableForms.class.getName();

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (BodyRefused refused) {
            if (!response.isCommitted()) {
                BareRefusals.write(response, BodyProblems.of(refused), ProblemRendering.isForApi(request));
            }
        } catch (InvalidParameterException unreadable) {
            refuse(BodyProblems.of(unreadable), request, response);
        }
    }

    private static void refuse(Problem problem, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        if (!response.isCommitted()) { // as the container has it once the client has gone
            request.setAttribute(PROBLEM, problem);
            response.sendError(problem.status());
        }
    }
}
